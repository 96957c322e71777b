/** Something the user can mend: one line on standard error, and this exit code. */
export class Stop extends Error {
  readonly code: 2 | 3;
  constructor(message: string, code: 2 | 3 = 2) {
    super(message);
    this.code = code;
  }
}
