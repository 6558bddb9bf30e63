export { type CraftInUse, Fleet, type FoundCraft, type FoundStation } from './fleet.js';
