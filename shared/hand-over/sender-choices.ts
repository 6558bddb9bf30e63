/** A part of a picture to be blurred; whole pixels of the picture turned upright. */
export interface Region {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** What the sender wants otherwise than the profile has it. */
export interface Choice {
  /** A kind (`medical`), a field (`people:/people/p1/birthDate`), or the id of a file. */
  readonly what: string;
  readonly does: 'goes' | 'stays';
  /** Needed where it overrides the profile. */
  readonly reason?: string;
}

/** Everything that a person says about one packet beside the profile. */
export interface SenderChoices {
  /** Id of the person of the record who receives it, where it is one. */
  readonly person?: string;
  readonly choices: readonly Choice[];
  /** By file: where strangers can be seen in it; an empty list says that somebody looked and there are none. */
  readonly strangers: Readonly<Record<string, readonly Region[]>>;
}

export const NO_CHOICES: SenderChoices = { choices: [], strangers: {} };
