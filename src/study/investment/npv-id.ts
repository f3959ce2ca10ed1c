/** The net present value of the investment plan of a case. */
export const npvId = 'investment.npv';
