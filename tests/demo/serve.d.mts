export interface DemoBoard {
  /** Address of the results page, with a slash at the end. */
  readonly url: string;
  readonly ads: readonly { readonly id: string; readonly url: string; readonly title: string }[];
  close(): Promise<void>;
}

export function serve(options?: { port?: number }): Promise<DemoBoard>;
