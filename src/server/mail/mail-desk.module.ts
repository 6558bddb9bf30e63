import { Module } from '@nestjs/common';
import { MailDeskService } from './mail-desk.service.js';
import { MailController } from './mail.controller.js';

/** What administrators see of mail. */
@Module({ controllers: [MailController], providers: [MailDeskService] })
export class MailDeskModule {}
