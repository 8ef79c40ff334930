import { inverse } from "../../src/library/numerics/inverse.ts";
import { factorise, solveFactored } from "../../src/library/numerics/lu.ts";
import { type Glider, functions } from "../../src/library/index.ts";
import { derivativesAt } from "../../src/library/flow/derivatives.ts";
import { loadsAbout } from "../../src/library/flow/quadratic-loads.ts";
import { solveLattice } from "../../src/library/flow/solve-lattice.ts";
