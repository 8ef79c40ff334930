/**
 * What to mind at each kind of work, in our words. Limits and protection: HSE EH40 and HSE guidance on wood dust (hardwood
 * 3 mg/m³, balsa being one; FFP3 or half-mask P3), HSE RR646 (cyanoacrylate 0.3 ppm over 15 min), NIOSH on fibrous glass;
 * all verified. Heat of cyanoacrylate on cotton and glass, first aid: verified. Blade, accelerator and toss: common practice.
 */
export const cautions = {
  blade:
    "Fresh blade, steel rule, several light passes, the holding hand behind the cut. Used blades go into a closed tin.",
  woodDust:
    "Balsa counts as a hardwood. Wear FFP3 or a half-mask with P3 and goggles, and sand at an extractor or out of doors; a nuisance mask, FFP1 or FFP2 is too little.",
  glue: "Fresh air from the side that carries the vapour away: a dust mask does not stop it. Goggles and nitrile or polyethylene gloves. Skin that sticks is rolled apart in warm soapy water, never torn.",
  clothGlue:
    "Thin cyanoacrylate on glass cloth, and on cotton, wool or leather, heats up within seconds: it burns and smokes. No cotton gloves or sleeves, small doses, no accelerator on wet cloth, fresh air.",
  epoxy: "Nitrile gloves and fresh air; resin on skin is washed off with soap and water at once, not with solvent.",
  glassDust: "Wear FFP3 and goggles, tape the sleeves, sand wet or at an extractor, and wipe up with a damp cloth.",
  toss: "Nobody ahead, and goggles for who stands near. Its nose is never aimed at anyone, by hand or off a rubber line, and nobody stands within a line's reach.",
} as const;

/** Whose rules come first. */
export const localCodes =
  "Local law, the safety code of the national rocketry or model-flying body, and the rules of the school or club come before anything here.";
