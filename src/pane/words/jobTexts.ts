/** Words for the job on paper and at the saw. */
export const jobTexts = {
  title: "Paper and phone",
  lead: "One packet with everything, or large cards to tick off.",
  print: "Print the job",
  saw: "At the saw",
};
