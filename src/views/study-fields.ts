/** Every word of the form in which a study is said, beside those of all forms. */
export const studyFields = {
  pair: "same of the other half",
  correlation: "how far they go together, 0 to 1",
  checks: "checks that count",
  anotherCheck: "another check",
  allChecks: "all checks",
  noCheck: "none",
  trials: "a curve for the trial",
  anotherTrial: "another trial",
  seed: "seed of chance",
} as const;
