/* Generated from schemas/setup.schema.json by `npm run generate`. Do not edit. */

// @ts-nocheck: the body is compiled code; the exports below it are typed by hand.

/** One thing that does not fit the schema. */
export interface SchemaError {
  /** JSON pointer to the value, "" for the whole. */
  readonly instancePath: string;
  /** JSON pointer into the schema, to the keyword that failed. */
  readonly schemaPath: string;
  /** The keyword that failed: "required", "enum", "additionalProperties" ... */
  readonly keyword: string;
  /** What the keyword has to say: { missingProperty }, { allowedValues }, { additionalProperty } ... */
  readonly params: Readonly<Record<string, unknown>>;
  /** The failure in words, in English. */
  readonly message?: string;
}

"use strict";
var compiled = (() => {
  var __defProp = Object.defineProperty;
  var __getOwnPropDesc = Object.getOwnPropertyDescriptor;
  var __getOwnPropNames = Object.getOwnPropertyNames;
  var __hasOwnProp = Object.prototype.hasOwnProperty;
  var __export = (target, all) => {
    for (var name in all)
      __defProp(target, name, { get: all[name], enumerable: true });
  };
  var __copyProps = (to, from, except, desc) => {
    if (from && typeof from === "object" || typeof from === "function") {
      for (let key of __getOwnPropNames(from))
        if (!__hasOwnProp.call(to, key) && key !== except)
          __defProp(to, key, { get: () => from[key], enumerable: !(desc = __getOwnPropDesc(from, key)) || desc.enumerable });
    }
    return to;
  };
  var __toCommonJS = (mod) => __copyProps(__defProp({}, "__esModule", { value: true }), mod);

  // validator.js
  var validator_exports = {};
  __export(validator_exports, {
    validateSetup: () => validateSetup
  });
  var validateSetup = validate20;
  var pattern4 = new RegExp("^[1-9]$", "u");
  var pattern7 = new RegExp("^[1-9]\\d{0,4}$", "u");
  var pattern9 = new RegExp("^(\\d{1,4}(\\.\\d{1,7})? mm|\\d{1,3}(\\.\\d{1,6})? in)$", "u");
  var pattern6 = new RegExp("^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$", "u");
  function validate21(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
    let vErrors = null;
    let errors = 0;
    const evaluated0 = validate21.evaluated;
    if (evaluated0.dynamicProps) {
      evaluated0.props = void 0;
    }
    if (evaluated0.dynamicItems) {
      evaluated0.items = void 0;
    }
    if (Array.isArray(data)) {
      if (data.length > 3) {
        const err0 = { instancePath, schemaPath: "#/maxItems", keyword: "maxItems", params: { limit: 3 }, message: "must NOT have more than 3 items" };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
      if (data.length < 3) {
        const err1 = { instancePath, schemaPath: "#/minItems", keyword: "minItems", params: { limit: 3 }, message: "must NOT have fewer than 3 items" };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
      const len0 = data.length;
      for (let i0 = 0; i0 < len0; i0++) {
        let data0 = data[i0];
        const _errs3 = errors;
        let valid3 = false;
        const _errs4 = errors;
        if (typeof data0 == "number" && isFinite(data0)) {
          if (data0 > 1e6 || isNaN(data0)) {
            const err2 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
            if (vErrors === null) {
              vErrors = [err2];
            } else {
              vErrors.push(err2);
            }
            errors++;
          }
          if (data0 < -1e6 || isNaN(data0)) {
            const err3 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
            if (vErrors === null) {
              vErrors = [err3];
            } else {
              vErrors.push(err3);
            }
            errors++;
          }
        } else {
          const err4 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        var _valid0 = _errs4 === errors;
        valid3 = valid3 || _valid0;
        const _errs6 = errors;
        if (typeof data0 === "string") {
          if (!pattern6.test(data0)) {
            const err5 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
            if (vErrors === null) {
              vErrors = [err5];
            } else {
              vErrors.push(err5);
            }
            errors++;
          }
        } else {
          const err6 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
        var _valid0 = _errs6 === errors;
        valid3 = valid3 || _valid0;
        if (!valid3) {
          const err7 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        } else {
          errors = _errs3;
          if (vErrors !== null) {
            if (_errs3) {
              vErrors.length = _errs3;
            } else {
              vErrors = null;
            }
          }
        }
      }
    } else {
      const err8 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "array" }, message: "must be array" };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    validate21.errors = vErrors;
    return errors === 0;
  }
  validate21.evaluated = { "items": true, "dynamicProps": false, "dynamicItems": false };
  function validate20(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
    ;
    let vErrors = null;
    let errors = 0;
    const evaluated0 = validate20.evaluated;
    if (evaluated0.dynamicProps) {
      evaluated0.props = void 0;
    }
    if (evaluated0.dynamicItems) {
      evaluated0.items = void 0;
    }
    if (data && typeof data == "object" && !Array.isArray(data)) {
      for (const key0 in data) {
        if (!(key0 === "workOffsets" || key0 === "lengths" || key0 === "rack" || key0 === "spindleHolds")) {
          const err0 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
          if (vErrors === null) {
            vErrors = [err0];
          } else {
            vErrors.push(err0);
          }
          errors++;
        }
      }
      if (data.workOffsets !== void 0) {
        let data0 = data.workOffsets;
        if (data0 && typeof data0 == "object" && !Array.isArray(data0)) {
          if (Object.keys(data0).length < 1) {
            const err1 = { instancePath: instancePath + "/workOffsets", schemaPath: "#/properties/workOffsets/minProperties", keyword: "minProperties", params: { limit: 1 }, message: "must NOT have fewer than 1 properties" };
            if (vErrors === null) {
              vErrors = [err1];
            } else {
              vErrors.push(err1);
            }
            errors++;
          }
          for (const key1 in data0) {
            if (!pattern4.test(key1)) {
              const err2 = { instancePath: instancePath + "/workOffsets", schemaPath: "#/properties/workOffsets/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err2];
              } else {
                vErrors.push(err2);
              }
              errors++;
            }
          }
          for (const key2 in data0) {
            if (pattern4.test(key2)) {
              if (!validate21(data0[key2], { instancePath: instancePath + "/workOffsets/" + key2.replace(/~/g, "~0").replace(/\//g, "~1"), parentData: data0, parentDataProperty: key2, rootData, dynamicAnchors })) {
                vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                errors = vErrors.length;
              }
            }
          }
        } else {
          const err3 = { instancePath: instancePath + "/workOffsets", schemaPath: "#/properties/workOffsets/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
      }
      if (data.lengths !== void 0) {
        let data2 = data.lengths;
        if (data2 && typeof data2 == "object" && !Array.isArray(data2)) {
          if (Object.keys(data2).length < 1) {
            const err4 = { instancePath: instancePath + "/lengths", schemaPath: "#/properties/lengths/minProperties", keyword: "minProperties", params: { limit: 1 }, message: "must NOT have fewer than 1 properties" };
            if (vErrors === null) {
              vErrors = [err4];
            } else {
              vErrors.push(err4);
            }
            errors++;
          }
          for (const key3 in data2) {
            if (!pattern7.test(key3)) {
              const err5 = { instancePath: instancePath + "/lengths", schemaPath: "#/properties/lengths/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key3 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err5];
              } else {
                vErrors.push(err5);
              }
              errors++;
            }
          }
          for (const key4 in data2) {
            if (pattern7.test(key4)) {
              let data3 = data2[key4];
              const _errs10 = errors;
              let valid3 = false;
              const _errs11 = errors;
              if (typeof data3 == "number" && isFinite(data3)) {
                if (data3 > 1e4 || isNaN(data3)) {
                  const err6 = { instancePath: instancePath + "/lengths/" + key4.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/lengths/patternProperties/%5E%5B1-9%5D%5Cd%7B0%2C4%7D%24/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e4 }, message: "must be <= 10000" };
                  if (vErrors === null) {
                    vErrors = [err6];
                  } else {
                    vErrors.push(err6);
                  }
                  errors++;
                }
                if (data3 <= 0 || isNaN(data3)) {
                  const err7 = { instancePath: instancePath + "/lengths/" + key4.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/lengths/patternProperties/%5E%5B1-9%5D%5Cd%7B0%2C4%7D%24/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                  if (vErrors === null) {
                    vErrors = [err7];
                  } else {
                    vErrors.push(err7);
                  }
                  errors++;
                }
              } else {
                const err8 = { instancePath: instancePath + "/lengths/" + key4.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/lengths/patternProperties/%5E%5B1-9%5D%5Cd%7B0%2C4%7D%24/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                if (vErrors === null) {
                  vErrors = [err8];
                } else {
                  vErrors.push(err8);
                }
                errors++;
              }
              var _valid0 = _errs11 === errors;
              valid3 = valid3 || _valid0;
              const _errs13 = errors;
              if (typeof data3 === "string") {
                if (!pattern9.test(data3)) {
                  const err9 = { instancePath: instancePath + "/lengths/" + key4.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/lengths/patternProperties/%5E%5B1-9%5D%5Cd%7B0%2C4%7D%24/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(\\d{1,4}(\\.\\d{1,7})? mm|\\d{1,3}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(\\d{1,4}(\\.\\d{1,7})? mm|\\d{1,3}(\\.\\d{1,6})? in)$"' };
                  if (vErrors === null) {
                    vErrors = [err9];
                  } else {
                    vErrors.push(err9);
                  }
                  errors++;
                }
              } else {
                const err10 = { instancePath: instancePath + "/lengths/" + key4.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/lengths/patternProperties/%5E%5B1-9%5D%5Cd%7B0%2C4%7D%24/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                if (vErrors === null) {
                  vErrors = [err10];
                } else {
                  vErrors.push(err10);
                }
                errors++;
              }
              var _valid0 = _errs13 === errors;
              valid3 = valid3 || _valid0;
              if (!valid3) {
                const err11 = { instancePath: instancePath + "/lengths/" + key4.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/lengths/patternProperties/%5E%5B1-9%5D%5Cd%7B0%2C4%7D%24/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                if (vErrors === null) {
                  vErrors = [err11];
                } else {
                  vErrors.push(err11);
                }
                errors++;
              } else {
                errors = _errs10;
                if (vErrors !== null) {
                  if (_errs10) {
                    vErrors.length = _errs10;
                  } else {
                    vErrors = null;
                  }
                }
              }
            }
          }
        } else {
          const err12 = { instancePath: instancePath + "/lengths", schemaPath: "#/properties/lengths/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err12];
          } else {
            vErrors.push(err12);
          }
          errors++;
        }
      }
      if (data.rack !== void 0) {
        let data4 = data.rack;
        if (Array.isArray(data4)) {
          if (data4.length > 200) {
            const err13 = { instancePath: instancePath + "/rack", schemaPath: "#/properties/rack/maxItems", keyword: "maxItems", params: { limit: 200 }, message: "must NOT have more than 200 items" };
            if (vErrors === null) {
              vErrors = [err13];
            } else {
              vErrors.push(err13);
            }
            errors++;
          }
          if (data4.length < 1) {
            const err14 = { instancePath: instancePath + "/rack", schemaPath: "#/properties/rack/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
            if (vErrors === null) {
              vErrors = [err14];
            } else {
              vErrors.push(err14);
            }
            errors++;
          }
          const len0 = data4.length;
          for (let i0 = 0; i0 < len0; i0++) {
            let data5 = data4[i0];
            if (!(typeof data5 == "number" && (!(data5 % 1) && !isNaN(data5)) && isFinite(data5))) {
              const err15 = { instancePath: instancePath + "/rack/" + i0, schemaPath: "#/properties/rack/items/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err15];
              } else {
                vErrors.push(err15);
              }
              errors++;
            }
            if (typeof data5 == "number" && isFinite(data5)) {
              if (data5 > 99999 || isNaN(data5)) {
                const err16 = { instancePath: instancePath + "/rack/" + i0, schemaPath: "#/properties/rack/items/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999 }, message: "must be <= 99999" };
                if (vErrors === null) {
                  vErrors = [err16];
                } else {
                  vErrors.push(err16);
                }
                errors++;
              }
              if (data5 < 0 || isNaN(data5)) {
                const err17 = { instancePath: instancePath + "/rack/" + i0, schemaPath: "#/properties/rack/items/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err17];
                } else {
                  vErrors.push(err17);
                }
                errors++;
              }
            }
          }
        } else {
          const err18 = { instancePath: instancePath + "/rack", schemaPath: "#/properties/rack/type", keyword: "type", params: { type: "array" }, message: "must be array" };
          if (vErrors === null) {
            vErrors = [err18];
          } else {
            vErrors.push(err18);
          }
          errors++;
        }
      }
      if (data.spindleHolds !== void 0) {
        let data6 = data.spindleHolds;
        const _errs20 = errors;
        let valid6 = false;
        const _errs21 = errors;
        if (!(typeof data6 == "number" && (!(data6 % 1) && !isNaN(data6)) && isFinite(data6))) {
          const err19 = { instancePath: instancePath + "/spindleHolds", schemaPath: "#/properties/spindleHolds/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
          if (vErrors === null) {
            vErrors = [err19];
          } else {
            vErrors.push(err19);
          }
          errors++;
        }
        if (typeof data6 == "number" && isFinite(data6)) {
          if (data6 > 99999 || isNaN(data6)) {
            const err20 = { instancePath: instancePath + "/spindleHolds", schemaPath: "#/properties/spindleHolds/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999 }, message: "must be <= 99999" };
            if (vErrors === null) {
              vErrors = [err20];
            } else {
              vErrors.push(err20);
            }
            errors++;
          }
          if (data6 < 1 || isNaN(data6)) {
            const err21 = { instancePath: instancePath + "/spindleHolds", schemaPath: "#/properties/spindleHolds/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
            if (vErrors === null) {
              vErrors = [err21];
            } else {
              vErrors.push(err21);
            }
            errors++;
          }
        }
        var _valid1 = _errs21 === errors;
        valid6 = valid6 || _valid1;
        const _errs23 = errors;
        if (typeof data6 !== "string") {
          const err22 = { instancePath: instancePath + "/spindleHolds", schemaPath: "#/properties/spindleHolds/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err22];
          } else {
            vErrors.push(err22);
          }
          errors++;
        }
        if ("none" !== data6) {
          const err23 = { instancePath: instancePath + "/spindleHolds", schemaPath: "#/properties/spindleHolds/anyOf/1/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err23];
          } else {
            vErrors.push(err23);
          }
          errors++;
        }
        var _valid1 = _errs23 === errors;
        valid6 = valid6 || _valid1;
        if (!valid6) {
          const err24 = { instancePath: instancePath + "/spindleHolds", schemaPath: "#/properties/spindleHolds/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err24];
          } else {
            vErrors.push(err24);
          }
          errors++;
        } else {
          errors = _errs20;
          if (vErrors !== null) {
            if (_errs20) {
              vErrors.length = _errs20;
            } else {
              vErrors = null;
            }
          }
        }
      }
    } else {
      const err25 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
      if (vErrors === null) {
        vErrors = [err25];
      } else {
        vErrors.push(err25);
      }
      errors++;
    }
    validate20.errors = vErrors;
    return errors === 0;
  }
  validate20.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
  return __toCommonJS(validator_exports);
})();

export function validateSetup(data: unknown): readonly SchemaError[] {
  return compiled.validateSetup(data) ? [] : compiled.validateSetup.errors;
}
