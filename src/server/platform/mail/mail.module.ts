import {
  type BeforeApplicationShutdown,
  type DynamicModule,
  Logger,
  Module,
  type OnApplicationBootstrap,
} from '@nestjs/common';
import { Clock } from '../clock.js';
import { MailRows } from '../database/mail-rows.js';
import { UnitOfWork } from '../database/unit-of-work.js';
import type { MailSettings } from '../mail-config.js';
import { FolderCarrier } from './folder-carrier.js';
import type { MailCarrier } from './mail-carrier.js';
import { MailQueue } from './mail-queue.js';
import { later, MailRounds } from './mail-rounds.js';
import { MailSender } from './mail-sender.js';
import { SentMail } from './sent-mail.js';
import { SmtpCarrier } from './smtp-carrier.js';

/** Begins with what the last run left, and ends before the database is let go of. */
class MailKeeper implements OnApplicationBootstrap, BeforeApplicationShutdown {
  constructor(private readonly rounds: MailRounds) {}

  onApplicationBootstrap(): void {
    this.rounds.wake();
  }

  beforeApplicationShutdown(): Promise<void> {
    return this.rounds.stop();
  }
}

function carrierOf(settings: MailSettings): MailCarrier {
  return settings.kind === 'smtp'
    ? new SmtpCarrier(settings.server, settings.from)
    : new FolderCarrier(settings.folder, settings.from);
}

/** Mail: queued with its cause, sent after it. */
@Module({})
export class MailModule {
  static with(settings: MailSettings): DynamicModule {
    const logger = new Logger('Mail');
    const report = (error: unknown): void => logger.error(error instanceof Error ? error.stack : error);
    const domain = settings.from.address.slice(settings.from.address.lastIndexOf('@') + 1);
    return {
      module: MailModule,
      global: true,
      providers: [
        {
          provide: MailRows,
          inject: [UnitOfWork],
          useFactory: (unitOfWork: UnitOfWork) => new MailRows(unitOfWork),
        },
        { provide: SentMail, useFactory: () => new SentMail(report) },
        {
          provide: MailRounds,
          inject: [UnitOfWork, MailRows, Clock, SentMail],
          useFactory: (unitOfWork: UnitOfWork, rows: MailRows, clock: Clock, sent: SentMail) => {
            const carrier = carrierOf(settings);
            const chance = (): number => Math.random();
            const sender = new MailSender({ unitOfWork, rows, clock, carrier, sent, chance, report });
            return new MailRounds({ sender, clock, later, report });
          },
        },
        {
          provide: MailKeeper,
          inject: [MailRounds],
          useFactory: (rounds: MailRounds) => new MailKeeper(rounds),
        },
        {
          provide: MailQueue,
          inject: [UnitOfWork, MailRows, Clock, MailRounds],
          useFactory: (unitOfWork: UnitOfWork, rows: MailRows, clock: Clock, rounds: MailRounds) =>
            new MailQueue({ unitOfWork, rows, clock, domain, wake: () => rounds.wake() }),
        },
      ],
      exports: [MailQueue, MailRows, MailRounds, SentMail],
    };
  }
}
