export { emitterTypes } from "./emitter-types.ts";
export { generateEmitter } from "./generate-emitter.ts";
export { loadEmitter } from "./load-emitter.ts";
export type { EmitOptions, EmitStart, Emitter } from "./emitter.ts";
export { isGeneratedModule } from "./module-header.ts";
export type { ModuleOrigin } from "./module-header.ts";
