import { Module } from '@nestjs/common';
import { VocabularyController } from './vocabulary.controller.js';

/** The words of the trade, for whoever fills in a field. */
@Module({ controllers: [VocabularyController] })
export class VocabularyModule {}
