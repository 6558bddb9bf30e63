/** One fault in a document: where it is (RFC 6901 pointer) and what to do about it. */
export interface FieldError {
  readonly pointer: string;
  readonly detail: string;
}
