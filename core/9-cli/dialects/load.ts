import type { CachedDialect } from "./cache.ts";
import type { ChainFile } from "./loader.ts";
import type { LoadedDialect, RefusedDialect } from "./loaded.ts";
import { loadBuilt } from "./shipped.ts";

/**
 * Loads a dialect by the shortest way: a shipped one as it was built with the package, the user's own from the cache, or
 * else from its files. The code for a longer way is loaded when that way is gone.
 *
 * @param name a shipped name or the path of a file
 * @param useCache whether the cache folder may be read and written
 */
export async function loadDialect(name: string, useCache: boolean): Promise<LoadedDialect | RefusedDialect> {
  const shipped = loadBuilt(name);
  if (shipped !== undefined) return shipped;
  const [{ readCached, writeCached }, { pathsOf }] = await Promise.all([
    import("./cache.ts"),
    import("./loader.ts"),
  ]);
  const cached = useCache ? readCached(name) : undefined;
  if (cached !== undefined) return asLoaded(cached, pathsOf);
  const { buildAside } = await import("./build-aside.ts");
  const { findings, chain, built } = await buildAside(name);
  if (built === undefined) return { refused: true, findings, paths: pathsOf(chain) };
  const { dialect, emitterSource } = built;
  const fresh = { dialect, emitterSource, findings, chain };
  if (useCache) writeCached(name, fresh);
  return asLoaded(fresh, pathsOf);
}

function asLoaded(
  { dialect, findings, chain, emitterSource }: CachedDialect,
  paths: (chain: readonly ChainFile[]) => Record<string, string>,
): LoadedDialect {
  const emitter = `data:text/javascript;charset=utf-8,${encodeURIComponent(emitterSource)}`;
  return { dialect, findings, paths: paths(chain), emitter };
}
