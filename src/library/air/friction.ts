/** Friction coefficient of one side of a smooth plate in laminar flow: Blasius 1908, 1.328/√Re (from memory). */
export const laminar = (reynolds: number): number => 1.328 / Math.sqrt(reynolds);

/** The same in turbulent flow: Prandtl and Schlichting 1932, 0.455/(log₁₀ Re)^2.58 (from memory). */
export const turbulent = (reynolds: number): number => 0.455 / Math.log10(reynolds) ** 2.58;

/** Drag of a body's surface over that of a plate: Hoerner 1965, 1 + 1.5·(d/l)^1.5 + 7·(d/l)³ (from memory). */
export const bodyForm = (slenderness: number): number => 1 + 1.5 / slenderness ** 1.5 + 7 / slenderness ** 3;
