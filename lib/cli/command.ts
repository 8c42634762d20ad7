/** Exit codes: done; findings at or over the level asked for; bad input or misuse. */
export const EXIT = { done: 0, findings: 1, misuse: 2 } as const

/** What a command reads from and writes to, so that tests can hand it their own. */
export type Io = {
  /** Results. */
  readonly out: (text: string | Uint8Array) => void
  /** Everything else: progress, notices, problems. */
  readonly err: (text: string) => void
  /** Reads a file, or standard input for `-`. @throws TellwrightError `cannot-read` */
  readonly read: (path: string) => Promise<Uint8Array>
  /** Writes a file, or standard output for `-`. @throws TellwrightError `cannot-write` */
  readonly write: (path: string, content: string | Uint8Array) => Promise<void>
}

/** One verb of the command line. */
export type Command = {
  readonly verb: string
  /** One line for the list of verbs. */
  readonly about: string
  /** The whole text of `--help`. */
  readonly usage: string
  /** @returns the exit code */
  readonly run: (args: readonly string[], io: Io) => Promise<number>
}

/** @returns a file, or standard input for `-`, as text (UTF-8). @throws TellwrightError `cannot-read` */
export const readText = async ({ read }: Io, path: string): Promise<string> =>
  new TextDecoder().decode(await read(path))
