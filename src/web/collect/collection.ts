/** How a link stands, as the service tells it to whoever has it. */
export interface LinkStanding {
  readonly state: 'open' | 'expired' | 'revoked' | 'locked';
  readonly opensBy: 'passcode' | 'sign-in';
  readonly triesLeft: number;
  readonly until: string;
}

/** What waits for somebody, as the service tells it to whoever opened the link. */
export interface Collection {
  readonly reference: string;
  readonly sender: string;
  readonly to: string;
  readonly purpose: string;
  readonly madeAt: string;
  readonly until: string;
  readonly files: number;
  readonly head: { readonly size: number; readonly root: string };
}
