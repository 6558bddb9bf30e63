export { Fleet, type FoundCraft } from './fleet.js';
