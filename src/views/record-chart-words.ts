/** What charts of one result are called, and what they need. */
export const recordChartWords = {
  titles: {
    span_loading: "Span loading",
    sink_polar: "Sink polar",
    modes: "Modes of motion",
    flight_history: "Flight after letting go",
  },
  needs: (made: string) =>
    `This chart shows what ${made} gives. Name a cell with such a formula in its details, under “what it shows”.`,
} as const;
