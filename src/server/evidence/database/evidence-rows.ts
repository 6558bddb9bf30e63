import type { MappedClass } from '../../platform/database/data-source.js';
import { UploadRow } from './upload.row.js';

/** Every row that this module keeps. */
export const EVIDENCE_ROWS: readonly MappedClass[] = [UploadRow];
