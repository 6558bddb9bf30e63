/**
 * A value that no proof can be made of: it has no single written form, or it is not what the proof needs.
 * The message names the place and the kind of fault, never the value, so that it may be logged.
 */
export class UnprovableError extends TypeError {
  override readonly name = 'UnprovableError';

  constructor(
    /** RFC 6901 pointer to the part at fault; empty for the whole. */
    readonly pointer: string,
    readonly problem: string,
  ) {
    super(pointer === '' ? problem : `${pointer}: ${problem}`);
  }
}
