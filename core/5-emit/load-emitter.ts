import type { Emitter } from "./emitter.ts";

/**
 * Makes a generated module's text an emitter, under Node and in a browser alike.
 *
 * @param source what generateEmitter gave, for the same version
 */
export async function loadEmitter(source: string): Promise<Emitter> {
  const address = `data:text/javascript;charset=utf-8,${encodeURIComponent(source)}`;
  return (await import(/* @vite-ignore */ address)) as Emitter;
}
