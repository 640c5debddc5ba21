/** Something wrong or odd in a plan, said in one sentence. `pointer` is the JSON Pointer (RFC 6901) of it. */
export interface Problem {
  readonly pointer: string;
  readonly message: string;
  readonly severity: 'error' | 'warning';
}
