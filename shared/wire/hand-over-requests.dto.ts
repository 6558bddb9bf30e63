import { type Recipient, RECIPIENTS } from '../hand-over/hand-over-profile.js';
import type { SenderChoices } from '../hand-over/sender-choices.js';
import { wholeNumber, words } from './fleet-values.js';
import { Items, Needed, Value } from './record-members.js';
import { id, listOf, oneOf } from './record-values.js';

const pixels = wholeNumber(0, 100_000, 'a number of pixels');
const extent = wholeNumber(1, 100_000, 'a number of pixels');

class RegionDto {
  @Needed(id)
  id: string;

  @Needed(pixels)
  left: number;

  @Needed(pixels)
  top: number;

  @Needed(extent)
  width: number;

  @Needed(extent)
  height: number;
}

class ChoiceDto {
  @Needed(id)
  id: string;

  /** A kind, a field, or the id of a file. */
  @Needed(words('a kind, a field such as people:/people/p1/name, or the id of a file', 300))
  what: string;

  @Needed(oneOf(['goes', 'stays']))
  does: 'goes' | 'stays';

  @Value(words('why', 1000))
  reason?: string;
}

class StrangersDto {
  /** Of the file. */
  @Needed(id)
  id: string;

  /** Where strangers can be seen; an empty list says that there are none. */
  @Items(() => RegionDto)
  regions?: RegionDto[];
}

/** For whom a packet is made, and what the sender wants otherwise than the profile has it. */
export class PacketDraftDto {
  @Needed(oneOf(RECIPIENTS))
  recipient: Recipient;

  @Needed(words('whom it is for, by name', 300))
  name: string;

  @Needed(words('what it is for', 1000))
  purpose: string;

  /** Id of the person of the record who receives it. */
  @Value(id)
  person?: string;

  @Items(() => ChoiceDto)
  choices?: ChoiceDto[];

  @Items(() => StrangersDto)
  strangers?: StrangersDto[];

  /** Texts that were shown as telling what the profile keeps, read, and let go all the same. */
  @Value(listOf(words('a field such as account:/whatHappened', 300), 'fields'))
  read?: string[];
}

/** That somebody outside has a packet, and with it the head of the log. */
export class PacketDeliveryDto {
  @Needed(words('who received it', 300))
  to: string;

  @Needed(words('in which way', 300))
  way: string;
}

/** What the sender says, as the profiles read it. */
export function choicesOf({ person, choices = [], strangers = [] }: PacketDraftDto): SenderChoices {
  return {
    ...(person === undefined ? {} : { person }),
    choices: choices.map(({ what, does, reason }) => ({
      what,
      does,
      ...(reason === undefined ? {} : { reason }),
    })),
    strangers: Object.fromEntries(strangers.map(({ id: file, regions = [] }) => [file, regions])),
  };
}
