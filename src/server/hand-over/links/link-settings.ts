/** Where strangers reach the desk. */
export class LinkSettings {
  /** @param address such as https://desk.example.com, without a stroke at the end; null where nobody has said */
  constructor(readonly address: string | null) {}
}
