import { CHOICES, type Publication, type PublicationName } from './publication'
import { SINGLES } from './singles'
import { toFileName } from './text'

/** Every publication, in the order they are offered. */
export const PUBLICATIONS: readonly Publication[] = [
  ...SINGLES,
  {
    name: 'packet',
    about: 'One ZIP with all of these, the stills, and a manifest to check it by.',
    heeds: CHOICES,
    files: async (project, options) => {
      const [{ packetFiles }, { toZip }] = await Promise.all([import('./packet'), import('./zip')])
      const content = await toZip(await packetFiles([{ project, options }]))
      return [{ path: `${toFileName(project.procedure.title, 'procedure')}.zip`, type: 'application/zip', content }]
    },
  },
]

/** @returns the publication of that name; undefined where there is none. */
export const publicationOf = (name: string): Publication | undefined =>
  PUBLICATIONS.find(publication => publication.name === (name as PublicationName))
