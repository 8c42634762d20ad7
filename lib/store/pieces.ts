import type { Mark } from '@/lib/procedure/mark'

/** Marks on end that are written as one, and the name they are written under: the id of the first. */
export type Piece = { readonly name: string; readonly marks: readonly Mark[] }

/** Marks in a piece, on average: few enough to write at each pause in typing, many enough that a talk of hours has few pieces. */
const SIZE = 50

/** Whether a piece begins with a mark: told by its id alone, so that a mark more or less leaves all other pieces as they are. */
const begins = ({ id }: Mark): boolean => {
  let sum = 0
  for (const letter of id) sum = (Math.imul(sum, 31) + (letter.codePointAt(0) ?? 0)) >>> 0
  return sum % SIZE === 0
}

/** @returns the marks in pieces, in their order; none for no marks. */
export const toPieces = (marks: readonly Mark[]): readonly Piece[] => {
  const pieces: { name: string; marks: Mark[] }[] = []
  for (const mark of marks) {
    const last = pieces.at(-1)
    if (last === undefined || begins(mark)) pieces.push({ name: mark.id, marks: [mark] })
    else last.marks.push(mark)
  }
  return pieces
}

/** What of the pieces has to be written and which are to go, after those written before. */
export const changedPieces = (
  before: readonly Piece[],
  now: readonly Piece[],
): { readonly put: readonly Piece[]; readonly gone: readonly string[] } => {
  const old = new Map(before.map(piece => [piece.name, piece.marks]))
  const names = new Set(now.map(({ name }) => name))
  return {
    put: now.filter(({ name, marks }) => {
      const written = old.get(name)
      return written?.length !== marks.length || !marks.every((mark, i) => mark === written[i])
    }),
    gone: before.flatMap(({ name }) => (names.has(name) ? [] : [name])),
  }
}
