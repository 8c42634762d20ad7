declare module 'commonmark' {
  export class Parser {
    parse(text: string): object
  }
  export class HtmlRenderer {
    constructor(options?: { safe?: boolean })
    render(tree: object): string
  }
}

declare module 'jsonld' {
  type Loader = (url: string) => Promise<{ contextUrl?: string; document: object; documentUrl: string }>
  const jsonld: { expand: (document: object, options: { documentLoader: Loader }) => Promise<unknown[]> }

  // biome-ignore lint/style/noDefaultExport: the package exports so
  export default jsonld
}
