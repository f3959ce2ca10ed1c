/**
 * Takes files that are dropped anywhere on the window. Without this a page gives itself up for the dropped file. Returns what ends
 * it.
 */
export function takeDroppedFiles(onfile: (file: File) => void): () => void {
  const carriesFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;
  const over = (event: DragEvent): void => {
    if (carriesFiles(event)) event.preventDefault();
  };
  const drop = (event: DragEvent): void => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    const file = event.dataTransfer?.files[0];
    if (file !== undefined) onfile(file);
  };
  addEventListener('dragover', over);
  addEventListener('drop', drop);
  return () => {
    removeEventListener('dragover', over);
    removeEventListener('drop', drop);
  };
}
