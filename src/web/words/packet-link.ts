import { packetLink as en } from './en/packet-link.js';

export const packetLink = en;
