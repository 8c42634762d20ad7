/** @returns a title for what is in a file, by its name: no folder, no ending, blanks for `_` and `-` */
export const titleOfFile = (name: string): string =>
  (name.split(/[\\/]/).at(-1) ?? name).replace(/(\.tellwright)?\.[^.]*$/, '').replace(/[_-]+/g, ' ')
