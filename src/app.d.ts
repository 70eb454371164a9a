declare global {
  namespace App {
    interface PageState {
      /** What was asked to be deleted is, and the page that was come back to says so. */
      isDeleted?: boolean;
    }
  }
}

export {};
