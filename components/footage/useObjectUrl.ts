import { useEffect, useState } from 'react'

/** An address for the user's own file, freed when the file changes or the component goes. */
export const useObjectUrl = (file: Blob | undefined): string | undefined => {
  const [url, setUrl] = useState<string>()
  useEffect(() => {
    if (file === undefined) return setUrl(undefined)
    const made = URL.createObjectURL(file)
    setUrl(made)
    return () => URL.revokeObjectURL(made)
  }, [file])
  return url
}
