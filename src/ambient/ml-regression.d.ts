// what src/numeric/polynomialFit.ts calls of it; the package ships no declarations
declare module 'ml-regression' {
  export class MultivariateLinearRegression {
    constructor(x: number[][], y: number[][], options: { intercept: boolean; statistics: boolean });
    readonly weights: number[][];
    readonly stdErrorMatrix: { to2DArray(): number[][] };
  }
}
