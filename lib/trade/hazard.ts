/** What can hurt someone in service work, how a text betrays it, and the usual care. */
export type Hazard = {
  /** Kebab case; what a caution's `hazard` field may say. */
  readonly id: string
  /** Other names of it, as a caution's `hazard` field may have them. */
  readonly alias: readonly string[]
  /** What in a step, tool or material signals it. */
  readonly signals: RegExp
  /** Weaker signs: enough to miss a caution, not to say where it belongs. With `hintsIn`, only for such equipment. */
  readonly hints?: RegExp
  readonly hintsIn?: RegExp
  /** What in the same text shows that it is something else. */
  readonly not?: RegExp
  /** Equipment that has to match as well, where the words alone don't tell. */
  readonly equipment?: RegExp
  /** What a caution against it says. */
  readonly known: RegExp
  /** Protection that answers it, worn or set up in a step or listed as a tool. */
  readonly protection?: RegExp
  /** Signal word of the usual caution. */
  readonly level: 'danger' | 'warning' | 'caution' | 'notice'
  /** The usual caution: hazard, consequence, avoidance; always defers to the maker and to local rules. */
  readonly caution: string
  /** Where that comes from. */
  readonly source: string
}
