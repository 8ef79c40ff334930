import { integrateProduct } from "../numerics/integrate-product.ts";
import { wingStrips } from "../shape/strips.ts";
import type { Wing } from "../shape/wing-record.ts";

/**
 * Lift slope per radian of a flat wing from that of its section: Polhamus 1950, as in USAF DATCOM 4.1.3.2, at low speed
 * (from memory). Unswept it is Helmbold 1942.
 */
export function slopeOfFlat(aspectRatio: number, tanSweep: number, sectionSlope: number): number {
  const kappa = sectionSlope / (2 * Math.PI);
  return (2 * Math.PI * aspectRatio) / (2 + Math.sqrt((aspectRatio / kappa) ** 2 * (1 + tanSweep ** 2) + 4));
}

/**
 * Lift slope of a bent wing, per radian, on the area of its plan view: that of its panels laid flat, less what tilt
 * costs panel by panel (cos² of the cant), told on the smaller area.
 */
export function slopeOfWing(wing: Wing, sectionSlope: number): number {
  let [area, upright, sweep] = [0, 0, 0];
  for (const { length, cant, root, tip } of wingStrips(wing)) {
    const panel = integrateProduct(length, root.chord, tip.chord, 1, 1);
    area += panel;
    upright += panel * Math.cos(cant) ** 2;
    // Way aft of the line of half chords over the length of the panel.
    sweep += (panel * (tip.x + tip.chord / 2 - root.x - root.chord / 2)) / length;
  }
  const flat = slopeOfFlat(wing.developed_span ** 2 / area, sweep / area, sectionSlope);
  return (flat * upright) / wing.area;
}
