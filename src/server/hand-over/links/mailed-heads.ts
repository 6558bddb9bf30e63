import { randomUUID } from 'node:crypto';
import { Injectable, type OnModuleInit } from '@nestjs/common';
import type { ServiceActor } from '../../accounts/accounts.api.js';
import { SentMail, type SentMailLine } from '../../platform/mail/sent-mail.js';
import { ServiceSections } from '../../record/record.api.js';
import { HandOverBook, type KeptMailing } from '../hand-over-book.js';

/** What the mail of a link is queued for. */
export const mailKeyOf = (link: string): string => `packet-link/${link}`;

/**
 * Notes that the mail server took a mail with the head of a packet. It is the sender's own server: whether the mail came
 * to anybody, only they can say, so that it is kept apart from deliveries.
 */
@Injectable()
export class MailedHeads implements OnModuleInit {
  constructor(
    private readonly sent: SentMail,
    private readonly book: HandOverBook,
    private readonly sections: ServiceSections,
  ) {}

  onModuleInit(): void {
    this.sent.listen((mail) => this.note(mail));
  }

  private async note({ causeKey, incidentId, toAddress, at, words }: SentMailLine): Promise<void> {
    if (incidentId === null) return;
    await this.sections.run(async () => {
      const { links = [], mailings = [] } = await this.book.section(incidentId);
      const link = links.find(({ id }) => mailKeyOf(id) === causeKey);
      if (link?.head !== 'yes') return;
      const { id, packet, to } = link;
      const one: KeptMailing = {
        ...{ id: randomUUID(), link: id, packet, to },
        ...{ address: toAddress, at, answer: words },
      };
      await this.book.writePart(incidentId, { mailings: [...mailings, one] }, THE_SERVICE);
    });
  }
}

const THE_SERVICE: ServiceActor = { kind: 'service', personName: 'the service, as mail was taken' };
