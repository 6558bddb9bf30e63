import { mail, wholeNumber, words } from './fleet-values.js';
import { Needed, Value } from './record-members.js';
import { line, oneOf } from './record-values.js';

/** A week and a day more than most people are away; nothing that left stays open for ever. */
export const LINK_DAYS = { usual: 14, most: 30 };

/** How long whoever gave the passcode may begin downloads without giving it again. */
export const PERMIT_MS = 30 * 60_000;

/** Those that renters and staff are written to in. */
export const LINK_LANGUAGES = ['en', 'es'] as const;
export type LinkLanguage = (typeof LINK_LANGUAGES)[number];

/** To whom a link to a packet goes, and for how long it opens. */
export class PacketLinkDto {
  /** Who collects it, by name. */
  @Needed(words('who collects it, by name', 300))
  to: string;

  @Needed(mail)
  address: string;

  /** Whole days after which it opens no more; 14 where nothing is said. */
  @Value(wholeNumber(1, LINK_DAYS.most, 'for how many days it opens'))
  days?: number;

  /** Whether the mail holds the head of the log too, as a witness outside the desk; yes where nothing is said. */
  @Value(oneOf(['yes', 'no']))
  head?: 'yes' | 'no';

  /** In which language the mail is; English where nothing is said. */
  @Value(oneOf(LINK_LANGUAGES))
  language?: LinkLanguage;
}

/** To which lawyer a link to a packet with notes for counsel goes. */
export class CounselLinkDto {
  /** Id of the account of counsel that is assigned the incident: it opens for nobody else. */
  @Needed(line)
  counsel: string;

  /** Where nothing is said, the address at which they said that mail finds them. */
  @Value(mail)
  address?: string;

  @Value(wholeNumber(1, LINK_DAYS.most, 'for how many days it opens'))
  days?: number;

  @Value(oneOf(['yes', 'no']))
  head?: 'yes' | 'no';
}

/** What was told to the recipient by another way than the mail. */
export class CollectionDto {
  @Needed(words('the passcode', 60))
  passcode: string;
}
