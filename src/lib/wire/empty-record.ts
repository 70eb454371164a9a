import type { LearnerRecord, Settings } from './record';

export const firstSettings: Settings = { units: 'imperial', scheme: 'auto' };

export function emptyRecord(): LearnerRecord {
  return {
    settings: firstSettings,
    predictions: [],
    progress: [],
    answers: [],
    outfits: [],
    plans: [],
    entries: [],
    draft: null,
    setAside: [],
    tries: [],
    sessions: [],
    club: []
  };
}
