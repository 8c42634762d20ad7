import type { Ref } from 'react'

type Props = {
  readonly ref?: Ref<HTMLInputElement>
  /** What a screen reader hears; a button elsewhere opens it. */
  readonly label: string
  readonly isMultiple?: boolean
  readonly onFiles: (files: readonly File[]) => void
}

/** The browser's own file field, out of sight: a button clicks it. The same file may be chosen twice in a row. */
export const FileInput = ({ ref, label, isMultiple = false, onFiles }: Props) => (
  <input
    ref={ref}
    type="file"
    multiple={isMultiple}
    className="apart"
    tabIndex={-1}
    aria-label={label}
    onChange={event => {
      const files = [...(event.target.files ?? [])]
      event.target.value = ''
      if (files.length > 0) onFiles(files)
    }}
  />
)
