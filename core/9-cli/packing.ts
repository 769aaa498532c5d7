import { deflateSync, inflateSync } from "node:zlib";
import type { Packing } from "#report";

/** Quick rather than small: the picture of a million motions is packed and unpacked a few times. */
export const packing: Packing = {
  deflate: (bytes) => deflateSync(bytes, { level: 5 }),
  inflate: (bytes) => inflateSync(bytes),
};
