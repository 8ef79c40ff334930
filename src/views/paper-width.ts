/** Width of a figure on paper, in px: what fits between the margins at a size that can be read. */
export const paperWidth = 660;
