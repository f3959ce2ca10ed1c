const ofTheProgram = ['About', 'Inputs', 'Sensitivity', 'Scenarios', 'Uncertainty', 'Checks', 'Sources', 'Change log'];

/** Whether everything on a sheet follows the inputs: others hold results of the program, or say what was changed. */
export function isOfTheModel(sheet: string): boolean {
  return !ofTheProgram.includes(sheet);
}
