import { tryMutants } from "./try-mutants.ts";

tryMutants(0, 2);
