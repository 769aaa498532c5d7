import { tryMutants } from "./try-mutants.ts";

tryMutants(1, 2);
