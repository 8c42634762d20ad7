import { useEffect, useRef } from 'react'
import { filesOfDrop, type GivenFile } from './given'

const isOfFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') === true

/** Takes files dropped anywhere on the page: a drop that nobody takes makes the browser open the file in place of the page. */
export const useDropped = (take: (given: readonly GivenFile[]) => void): void => {
  const now = useRef(take)
  now.current = take
  useEffect(() => {
    const over = (event: DragEvent) => {
      if (isOfFiles(event)) event.preventDefault()
    }
    const drop = (event: DragEvent) => {
      if (event.dataTransfer === null || !isOfFiles(event)) return
      event.preventDefault()
      void filesOfDrop(event.dataTransfer).then(given => now.current(given))
    }
    window.addEventListener('dragover', over)
    window.addEventListener('drop', drop)
    return () => {
      window.removeEventListener('dragover', over)
      window.removeEventListener('drop', drop)
    }
  }, [])
}
