/** Who stamps heads of the log with the time. */
export class TimeStampSettings {
  /** @param url of an authority that speaks RFC 3161 over HTTP; null where none was named, and then nothing is stamped */
  constructor(readonly url: string | null) {}
}
