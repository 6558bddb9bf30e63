/** One fault in a file of law: which file, where in it (RFC 6901 pointer) and what is wrong. */
export interface RulePackFault {
  readonly file: string;
  readonly pointer: string;
  readonly reason: string;
}

/**
 * The rule packs cannot be used. It names every fault at once and stops the start: a business must never be
 * told "no report is due" by law that was only half read.
 */
export class RulePackError extends Error {
  constructor(
    readonly directory: string,
    readonly faults: readonly RulePackFault[],
  ) {
    const lines = faults.map(
      ({ file, pointer, reason }) => `  ${file} ${pointer || '(whole file)'}: ${reason}`,
    );
    super([`The rule packs in ${directory} cannot be used.`, ...lines].join('\n'));
    this.name = 'RulePackError';
  }
}
