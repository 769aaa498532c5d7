/** Motions drawn by the graphics card. Lines are one pixel wide there; cuts are drawn three times, a pixel apart, while they are few. */
import { directions } from "./camera.ts";
import { endBytes } from "./pieces.ts";
import type { Picture, ShownInk } from "./picture.ts";

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
  readonly array: WebGLVertexArrayObject;
  readonly first: number;
  readonly lineOfMove: Uint32Array;
  readonly moves: number;
}

/** Undefined where the browser has no WebGL 2. */
export function createGlPicture(canvas: HTMLCanvasElement): Picture | undefined {
  const gl = canvas.getContext("webgl2", { antialias: true, preserveDrawingBuffer: false });
  if (gl === null) return undefined;
  const program = link(gl);
  if (program === undefined) return undefined;
  const at = (name: string): WebGLUniformLocation | null => gl.getUniformLocation(program, name);
  const places = Object.fromEntries(
    [
      "target",
      "rightward",
      "upward",
      "half_size",
      "shift",
      "scale",
      "by",
      "inks",
      "rapid",
      "machine",
      "background",
      "strength",
    ].map((name) => [name, at(name)]),
  );
  const buffers: Buffer[] = [];
  const texture = gl.createTexture();
  let lines = 0;
  return {
    name: "graphics card",
    add(piece) {
      const array = gl.createVertexArray();
      gl.bindVertexArray(array);
      gl.bindBuffer(gl.ARRAY_BUFFER, gl.createBuffer());
      gl.bufferData(gl.ARRAY_BUFFER, piece.ends!, gl.STATIC_DRAW);
      piece.ends = undefined;
      attribute(gl, program, "place", 3, 0);
      attribute(gl, program, "way", 1, 12);
      const what = gl.getAttribLocation(program, "what");
      gl.enableVertexAttribArray(what);
      gl.vertexAttribIPointer(what, 4, gl.UNSIGNED_BYTE, endBytes, 16);
      const { first, lineOfMove, moves } = piece;
      buffers.push({ array, first, lineOfMove, moves: moves.count });
      lines += piece.lines;
    },
    draw(drawing) {
      const { camera, width, height, background } = drawing;
      const ratio = canvas.width / width;
      gl.viewport(0, 0, canvas.width, canvas.height);
      gl.clearColor(background[0] / 255, background[1] / 255, background[2] / 255, 1);
      gl.clear(gl.COLOR_BUFFER_BIT);
      gl.useProgram(program);
      const { right, up } = directions(camera);
      gl.uniform3fv(places["target"], camera.target);
      gl.uniform3fv(places["rightward"], right);
      gl.uniform3fv(places["upward"], up);
      gl.uniform2f(places["half_size"], width / 2, height / 2);
      gl.uniform1f(places["scale"], camera.scale);
      gl.uniform1i(places["by"], ["tool", "operation", "kind"].indexOf(drawing.colourBy));
      gl.uniform3fv(
        places["background"],
        background.map((part) => part / 255),
      );
      gl.uniform4fv(
        places["rapid"],
        coded(drawing.rapid).map((part) => part / 255),
      );
      gl.uniform4fv(
        places["machine"],
        coded(drawing.machine).map((part) => part / 255),
      );
      setInks(gl, texture, drawing.inks);
      gl.uniform1i(places["inks"], 0);
      const wide =
        lines > mostWide || drawing.isMoving
          ? [[0, 0]]
          : [
              [0, 0],
              [1 / ratio, 0],
              [0, 1 / ratio],
            ];
      for (const [strength, part] of [
        [faint, "rest"],
        [1, "done"],
      ] as const)
        for (const [x, y] of wide) {
          gl.uniform2f(places["shift"], x, y);
          gl.uniform1f(places["strength"], strength);
          for (const buffer of buffers) drawPart(gl, buffer, drawing.done, part);
        }
    },
  };
}

function drawPart(gl: WebGL2RenderingContext, buffer: Buffer, done: number, part: "done" | "rest"): void {
  const split = buffer.lineOfMove[Math.min(Math.max(done - buffer.first, 0), buffer.moves)];
  const all = buffer.lineOfMove[buffer.moves];
  const [from, to] = part === "done" ? [0, split] : [split, all];
  if (to === from) return;
  gl.bindVertexArray(buffer.array);
  gl.drawArrays(gl.LINES, 2 * from, 2 * (to - from));
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
