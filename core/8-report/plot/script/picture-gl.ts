/** Motions drawn by the graphics card. Lines are one pixel wide there; cuts are drawn three times, a pixel apart, while they are few. */
import { directions } from "./camera.ts";
import type { Piece } from "./pieces.ts";
import { coarseSplit, endBytes, lineSplit } from "./pieces.ts";
import type { Drawing, Picture, ShownInk } from "./picture.ts";

const vertexShader = `#version 300 es
in vec3 place; in float way; in uvec4 what;
uniform vec3 target, rightward, upward; uniform vec2 half_size; uniform vec2 shift; uniform float scale; uniform int by;
uniform sampler2D inks; uniform vec4 rapid, machine;
flat out vec4 ink; flat out int dash; out float run;
void main() {
  uint kind = what.x;
  int index = by == 0 ? int(what.y) : by == 1 ? int(what.z) + 256 * int(what.w) : int(kind) - 1;
  vec4 own = texelFetch(inks, ivec2(index & 255, (index >> 8) & 255), 0);
  if (kind == 0u) own = rapid;
  if (kind == 4u) own = machine;
  int code = int(own.a * 255.0 + 0.5);
  ink = own; dash = code & 7; run = way * scale;
  vec3 from = place - target;
  vec2 at = vec2(dot(from, rightward), dot(from, upward)) * scale + shift;
  bool hidden = (code & 8) == 0 || (shift != vec2(0.0) && (kind == 0u || kind == 4u));
  gl_Position = hidden ? vec4(2.0, 2.0, 2.0, 1.0) : vec4(at / half_size, 0.0, 1.0);
}`;

const fragmentShader = `#version 300 es
precision highp float;
flat in vec4 ink; flat in int dash; in float run; uniform vec3 background; uniform float strength; out vec4 colour;
void main() {
  float t;
  if (dash == 1) { t = mod(run, 18.0); if (t > 13.0) discard; }
  if (dash == 2) { t = mod(run, 6.0); if (t > 3.0) discard; }
  if (dash == 3) { t = mod(run, 26.0); if ((t > 13.0 && t < 17.0) || t > 21.0) discard; }
  if (dash == 4) { t = mod(run, 10.0); if (t > 6.0) discard; }
  if (dash == 5) { t = mod(run, 7.0); if (t > 2.0) discard; }
  colour = vec4(mix(background, ink.rgb, strength), 1.0);
}`;

/** Lines up to which cuts are drawn wide. */
const mostWide = 300_000;

/** How strong motions are that are still to come. */
const faint = 0.28;

interface Buffer {
  readonly fine: WebGLVertexArrayObject;
  readonly coarse: WebGLVertexArrayObject;
  readonly piece: Piece;
}

/** Lines that any card draws in time. */
const fewLines = 60_000;

/** Milliseconds in which all motions must be drawn, or fewer are while the picture moves. */
const patience = 30;

/**
 * Undefined where the browser has no WebGL 2.
 *
 * @param isLong there are so many motions that smooth lines would cost more than they show
 */
export function createGlPicture(canvas: HTMLCanvasElement, isLong: boolean): Picture | undefined {
  const gl = canvas.getContext("webgl2", { antialias: !isLong, preserveDrawingBuffer: false });
  if (gl === null) return undefined;
  const program = link(gl);
  if (program === undefined) return undefined;
  const found = new Map<string, WebGLUniformLocation | null>();
  const at = (name: string): WebGLUniformLocation | null => {
    if (!found.has(name)) found.set(name, gl.getUniformLocation(program, name));
    return found.get(name) ?? null;
  };
  const buffers: Buffer[] = [];
  const texture = gl.createTexture();
  let lines = 0;
  /** Milliseconds that all lines took; undefined until they were drawn once. */
  let time: number | undefined;
  const isSlow = (): boolean => lines > fewLines && (time ?? Infinity) > patience;
  return {
    name: "graphics card",
    note: () => "",
    add(piece) {
      const fine = upload(gl, program, piece.ends!);
      piece.ends = undefined;
      buffers.push({ fine, coarse: upload(gl, program, piece.coarse.ends), piece });
      lines += piece.lines;
    },
    draw(drawing) {
      const began = performance.now();
      const isCoarse = drawing.isMoving && isSlow();
      const isWide = lines <= mostWide && !drawing.isMoving;
      setView(gl, program, at, drawing);
      setInks(gl, texture, drawing.inks);
      const pixel = drawing.width / canvas.width;
      for (const [strength, part] of passes) {
        gl.uniform1f(at("strength"), strength);
        for (const [x, y] of isWide ? wide : narrow) {
          gl.uniform2f(at("shift"), x * pixel, y * pixel);
          for (const buffer of buffers) drawPart(gl, buffer, drawing.done, part, isCoarse);
        }
      }
      if (drawing.isMoving || lines <= fewLines || time !== undefined) return;
      // To read a pixel waits for the card to have drawn them all.
      gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, new Uint8Array(4));
      time = performance.now() - began;
    },
  };
}

/** What is still to come is drawn first, and faint. */
const passes = [
  [faint, "rest"],
  [1, "done"],
] as const;

/** Shifts by pixels that make a line wider. */
const narrow = [[0, 0]] as const;
const wide = [
  [0, 0],
  [1, 0],
  [0, 1],
] as const;

function setView(
  gl: WebGL2RenderingContext,
  program: WebGLProgram,
  at: (name: string) => WebGLUniformLocation | null,
  { camera, width, height, background, colourBy, rapid, machine }: Drawing,
): void {
  const parts = (bytes: readonly number[]): number[] => bytes.map((byte) => byte / 255);
  const [red, green, blue] = parts(background);
  gl.viewport(0, 0, gl.drawingBufferWidth, gl.drawingBufferHeight);
  gl.clearColor(red, green, blue, 1);
  gl.clear(gl.COLOR_BUFFER_BIT);
  gl.useProgram(program);
  const { right, up } = directions(camera);
  gl.uniform3fv(at("target"), camera.target);
  gl.uniform3fv(at("rightward"), right);
  gl.uniform3fv(at("upward"), up);
  gl.uniform2f(at("half_size"), width / 2, height / 2);
  gl.uniform1f(at("scale"), camera.scale);
  gl.uniform1i(at("by"), ["tool", "operation", "kind"].indexOf(colourBy));
  gl.uniform3f(at("background"), red, green, blue);
  gl.uniform4fv(at("rapid"), parts(coded(rapid)));
  gl.uniform4fv(at("machine"), parts(coded(machine)));
  gl.uniform1i(at("inks"), 0);
}

function drawPart(
  gl: WebGL2RenderingContext,
  { fine, coarse, piece }: Buffer,
  done: number,
  part: "done" | "rest",
  isCoarse: boolean,
): void {
  const split = isCoarse ? coarseSplit(piece, done) : lineSplit(piece, done);
  const all = isCoarse ? piece.coarse.firstLine.length - 1 : piece.lines;
  const [from, to] = part === "done" ? [0, split] : [split, all];
  if (to === from) return;
  gl.bindVertexArray(isCoarse ? coarse : fine);
  gl.drawArrays(gl.LINES, 2 * from, 2 * (to - from));
}

function upload(
  gl: WebGL2RenderingContext,
  program: WebGLProgram,
  ends: ArrayBuffer,
): WebGLVertexArrayObject {
  const array = gl.createVertexArray();
  gl.bindVertexArray(array);
  gl.bindBuffer(gl.ARRAY_BUFFER, gl.createBuffer());
  gl.bufferData(gl.ARRAY_BUFFER, ends, gl.STATIC_DRAW);
  attribute(gl, program, "place", 3, 0);
  attribute(gl, program, "way", 1, 12);
  const what = gl.getAttribLocation(program, "what");
  gl.enableVertexAttribArray(what);
  gl.vertexAttribIPointer(what, 4, gl.UNSIGNED_BYTE, endBytes, 16);
  return array;
}

/** Colour, and in the last byte the dashes and whether it is shown. */
function coded({ colour, dash, isShown }: ShownInk): number[] {
  return [...colour, dash + (isShown ? 8 : 0)];
}

const textureWidth = 256;

function setInks(gl: WebGL2RenderingContext, texture: WebGLTexture, inks: readonly ShownInk[]): void {
  const rows = Math.max(1, Math.ceil(inks.length / textureWidth));
  const texels = new Uint8Array(4 * textureWidth * rows);
  inks.forEach((ink, index) => texels.set(coded(ink), 4 * index));
  gl.bindTexture(gl.TEXTURE_2D, texture);
  gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MIN_FILTER, gl.NEAREST);
  gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MAG_FILTER, gl.NEAREST);
  gl.texImage2D(gl.TEXTURE_2D, 0, gl.RGBA, textureWidth, rows, 0, gl.RGBA, gl.UNSIGNED_BYTE, texels);
}

function attribute(
  gl: WebGL2RenderingContext,
  program: WebGLProgram,
  name: string,
  size: number,
  offset: number,
): void {
  const place = gl.getAttribLocation(program, name);
  gl.enableVertexAttribArray(place);
  gl.vertexAttribPointer(place, size, gl.FLOAT, false, endBytes, offset);
}

function link(gl: WebGL2RenderingContext): WebGLProgram | undefined {
  const program = gl.createProgram();
  for (const [type, source] of [
    [gl.VERTEX_SHADER, vertexShader],
    [gl.FRAGMENT_SHADER, fragmentShader],
  ] as const) {
    const shader = gl.createShader(type);
    if (shader === null) return undefined;
    gl.shaderSource(shader, source);
    gl.compileShader(shader);
    gl.attachShader(program, shader);
  }
  gl.linkProgram(program);
  return gl.getProgramParameter(program, gl.LINK_STATUS) === true ? program : undefined;
}
