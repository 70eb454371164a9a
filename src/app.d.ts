declare global {
  /** False in a static folder, where no program of ours answers, see scripts/build-static.mjs. */
  const __FELTFOOT_HAS_SERVER__: boolean;

  namespace App {
    interface PageState {
      /** What was asked to be deleted is, and the page that was come back to says so. */
      isDeleted?: boolean;
    }
  }
}

export {};
