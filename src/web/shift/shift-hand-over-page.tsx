import type { PageProps } from '../app/page-route.js';
import { HandOverList } from './hand-over-list.js';
import { HandOverSheet } from './hand-over-sheet.js';
import './shift.css';

/** Hand-overs from shift to shift, or one of them. */
export default function ShiftHandOverPage({ params: { id } }: PageProps) {
  return id === undefined ? <HandOverList /> : <HandOverSheet id={id} />;
}
