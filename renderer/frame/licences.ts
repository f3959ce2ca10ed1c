/** One library that the program carries. `text` is the licence as the library brings it. */
export interface Licence {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly text: string;
}
