import type { Download, Page } from "playwright-core";

/** Takes the name that the first save of an opened file offers, where it offers one before the file comes. */
export async function saveUnderNewName(page: Page, coming: Promise<Download>): Promise<void> {
  const button = page.getByRole("button", { name: "Save under this name" });
  let came = false;
  void coming.then(() => (came = true));
  while (!came) {
    if (await button.isVisible()) return button.click();
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
