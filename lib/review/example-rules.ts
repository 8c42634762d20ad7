/** A rules file of a shop as an example: a level changed, and one of each thing that may be asked for. */
export const EXAMPLE_RULES = {
  format: 'tellwright-rules',
  version: 1,
  levels: { 'no-interval': 'fix', 'unexplained-short-form': 'off' },
  phrases: [{ phrase: 'two-person lift', where: 'gearbox', level: 'stop', why: 'Two backs were hurt.' }],
  hazards: [
    {
      id: 'overhead-crane',
      words: ['bay 3'],
      caution: 'The crane may pass over bay 3; stay out while it moves',
      level: 'warning',
    },
  ],
  names: [{ use: 'circlip pliers', not: ['snap ring pliers'] }],
}
