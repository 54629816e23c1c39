/** The printed page of one hole. */

export const sheet = {
  nothing: 'Nothing is planned yet. Choose a hole, wait for its plan, then print.',
  drawing: ({ number }: { readonly number: number }) => `Drawing of hole ${number}`,
  from: ({ tee, player }: { readonly tee: string; readonly player: string }) =>
    `from the ${tee} tee. Player: ${player}.`,
  invented: 'Invented course.',
  ball: ({ where, length }: { readonly where: string; readonly length: string }) =>
    `Ball ${where}, ${length} to the hole.`,
  recommended: ({ shot }: { readonly shot: string }) => `Recommended: ${shot}`,
  odds: 'Par / bogey / double +, %',
  close: '(too close to call)',
  foot: ({ seed }: { readonly seed: string }) =>
    `Estimates from the player’s shots (seed ${seed}). Distances are as good as the map: check them on the course. Local rules and the committee’s decisions come first.`,
};
