/** A file the user gave, with the handle by which the browser may open it again. */
export type GivenFile = { readonly file: File; readonly handle?: FileSystemFileHandle }

/** @returns the files of a drop, with handles where the browser gives them. */
export const filesOfDrop = async (transfer: DataTransfer): Promise<readonly GivenFile[]> => {
  const items = [...transfer.items].filter(item => item.kind === 'file')
  // Both must be asked for before the first await: the drop's data is gone afterwards.
  const asked = items.map(item => ({ file: item.getAsFile(), handle: item.getAsFileSystemHandle?.() }))
  const given = await Promise.all(
    asked.map(async ({ file, handle }): Promise<GivenFile[]> => {
      const found = await handle?.catch(() => null)
      if (file === null) return []
      return [found instanceof FileSystemFileHandle ? { file, handle: found } : { file }]
    }),
  )
  return given.flat()
}

/**
 * Lets the user choose files, with handles where the browser can.
 *
 * @param fallback an `<input type="file">` that is clicked where it cannot; its change event then brings the files
 * @returns the chosen files; none when the user turned away or the fallback was taken
 */
export const chooseFiles = async (fallback: HTMLInputElement | null): Promise<readonly GivenFile[]> => {
  if (typeof window.showOpenFilePicker !== 'function') {
    fallback?.click()
    return []
  }
  try {
    const handles = await window.showOpenFilePicker({ multiple: true })
    return await Promise.all(handles.map(async handle => ({ file: await handle.getFile(), handle })))
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return []
    fallback?.click()
    return []
  }
}
