import { ensureSynced } from './sync.mjs';

// What imports from pages by `$lib` finds it by a tsconfig that Kit writes.
await ensureSynced();
