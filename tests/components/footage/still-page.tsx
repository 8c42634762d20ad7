// StillPicker on a page of its own; what it hands over is kept on `globalThis.taken`.
import '@/app/globals.css'
import { createRoot } from 'react-dom/client'
import { StillPicker } from '@/components/footage/StillPicker'
import { openFootage } from '@/lib/footage/open'

const show = async (file: File): Promise<void> => {
  const opened = await openFootage(file, file.name)
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems))
  const root = document.createElement('main')
  document.body.append(root)
  const keep = async ({ time, alt, picture }: { time: number; alt: string; picture: Blob }) => {
    const { width, height } = await createImageBitmap(picture)
    Object.assign(globalThis, { taken: { time, alt, width, height } })
  }
  createRoot(root).render(
    <StillPicker footage={opened.value} span={{ start: 1, end: 6 }} now={() => 3} onTake={still => void keep(still)} />,
  )
}
Object.assign(globalThis, { footage: {}, show })
