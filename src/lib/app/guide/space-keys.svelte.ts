import { dropUnsaved, keepUnsaved, unsavedKeys, type GuideKey } from './unsaved-keys';

/** The keys of spaces that this browser was told and that were not saved yet. */
export class SpaceKeys {
  unsaved = $state.raw<readonly GuideKey[]>([]);
  /** Shown until the page is left, saved or not. */
  #told = $state.raw<GuideKey | null>(null);

  read(): void {
    this.unsaved = unsavedKeys(localStorage);
  }

  /** The key to be saved for the space of this name, or null. */
  of(name: string | undefined): GuideKey | null {
    return this.#told ?? this.unsaved.find((one) => one.name === name) ?? null;
  }

  /** A new key voids the one before. */
  tell(next: GuideKey, before: GuideKey | null): void {
    if (before) dropUnsaved(localStorage, before);
    keepUnsaved(localStorage, next);
    this.#told = next;
    this.read();
  }

  drop(key: GuideKey): void {
    dropUnsaved(localStorage, key);
    this.read();
  }

  saved(key: GuideKey): void {
    this.#told = key;
    this.drop(key);
  }
}
