declare module 'jstat' {
  const library: {
    readonly jStat: {
      readonly binomial: { cdf(successes: number, trials: number, rate: number): number };
      readonly beta: {
        pdf(at: number, alpha: number, beta: number): number;
        cdf(at: number, alpha: number, beta: number): number;
        inv(chance: number, alpha: number, beta: number): number;
      };
      gammaln(x: number): number;
      readonly triangular: { inv(chance: number, low: number, high: number, mode: number): number };
      spearmancoeff(one: readonly number[], other: readonly number[]): number;
      quantiles(
        values: readonly number[],
        shares: readonly number[],
        alpha: number,
        beta: number,
      ): readonly number[];
    };
  };
  export default library;
}

declare module '@lhncbc/ucum-lhc' {
  export const UcumLhcUtils: {
    getInstance(): {
      convertUnitTo(from: string, value: number, to: string): { readonly toVal: number | null };
    };
  };
}
