import type { Recipient } from '../../../shared/hand-over/hand-over-profile.js';
import type { Choice, Region } from '../../../shared/hand-over/sender-choices.js';

/** What somebody wants of a packet, before it is made. */
export interface PacketDraft {
  readonly recipient: Recipient;
  readonly name: string;
  readonly purpose: string;
  /** Id of a person of the record; empty for nobody. */
  readonly person: string;
  readonly choices: readonly Choice[];
  /** By file: where strangers are; an empty list says that somebody looked. */
  readonly strangers: Readonly<Record<string, readonly Region[]>>;
  /** Texts that may tell too much, were read, and are let go. */
  readonly read: readonly string[];
}

export const EMPTY_DRAFT: PacketDraft = {
  recipient: 'insurer',
  name: '',
  purpose: '',
  person: '',
  choices: [],
  strangers: {},
  read: [],
};

/** As the service takes it; without reasons where nobody wrote one. */
export function draftBody({
  recipient,
  name,
  purpose,
  person,
  choices,
  strangers,
  read,
}: PacketDraft): object {
  return {
    recipient,
    name: name.trim(),
    purpose: purpose.trim(),
    ...(person === '' ? {} : { person }),
    choices: choices.map(({ what, does, reason = '' }, place) => ({
      id: `c${place + 1}`,
      what,
      does,
      ...(reason.trim() === '' ? {} : { reason: reason.trim() }),
    })),
    read,
    strangers: Object.entries(strangers).map(([id, regions]) => ({
      id,
      regions: regions.map((region, place) => ({ id: `r${place + 1}`, ...region })),
    })),
  };
}

/** The draft with something chosen anew, or, with null, as the profile has it. */
export function choose(draft: PacketDraft, what: string, does: Choice['does'] | null): PacketDraft {
  const others = draft.choices.filter((choice) => choice.what !== what);
  return { ...draft, choices: does === null ? others : [...others, { what, does }] };
}

export function giveReason(draft: PacketDraft, what: string, reason: string): PacketDraft {
  const choices = draft.choices.map((choice) => (choice.what === what ? { ...choice, reason } : choice));
  return { ...draft, choices };
}
