import type { Finding } from '../base/index.js';

/** Results of one laboratory, or of one group of a class, on the same material. */
export interface StudyGroup {
  /** Name of the group; default its number, from 1. */
  readonly name?: string | undefined;
  /** Its results of one property, at least 1, in the unit of all groups. */
  readonly values: ArrayLike<number>;
}

/** Options of {@link interlaboratoryStudy}. */
export interface StudyOptions {
  /** Level of h and k, above 0 and below 1; default 0.005 (ASTM E691). */
  readonly alpha?: number | undefined;
}

/** One group beside the others. */
export interface GroupConsistency {
  /** Name. */
  readonly name: string;
  /** Number of results. */
  readonly n: number;
  /** Mean of the group. */
  readonly mean: number;
  /** Standard deviation within the group; absent for a single result. */
  readonly standardDeviation?: number;
  /** Mandel's h: how far its mean is off, in standard deviations of the means [1]. */
  readonly h: number;
  /** Mandel's k: its scatter over the common one [1]; absent for a single result. */
  readonly k?: number;
  /** What k exceeds by chance in a share α [1]; absent for a single result. */
  readonly criticalK?: number;
}

/** What a test says of the group that stands out most, as ISO 5725-2 names it: a straggler is above the limit of 5 %, an outlier above that of 1 %. */
export type StudyVerdict = 'none' | 'straggler' | 'outlier';

/** Cochran's test of the largest scatter. */
export interface CochranTest {
  /** Name of the group that scatters most. */
  readonly group: string;
  /** Its share of all squares C [1]; with unequal groups, of the squares weighted by degrees of freedom. */
  readonly statistic: number;
  /** What C exceeds by chance in 5 % of all studies [1]. */
  readonly criticalValue5: number;
  /** What C exceeds by chance in 1 % of all studies [1]. */
  readonly criticalValue1: number;
  /** Nothing, a straggler (above 5 %) or an outlier (above 1 %). */
  readonly verdict: StudyVerdict;
}

/** Grubbs's test of the mean that is farthest off. */
export interface GroupMeanTest {
  /** Name of the group whose mean is farthest off. */
  readonly group: string;
  /** Its distance from the mean of the means, in their standard deviations G [1]: the largest h, without its sign. */
  readonly statistic: number;
  /** What G exceeds by chance, either way, in 5 % of all studies [1]. */
  readonly criticalValue5: number;
  /** What G exceeds by chance, either way, in 1 % of all studies [1]. */
  readonly criticalValue1: number;
  /** Nothing, a straggler (above 5 %) or an outlier (above 1 %). */
  readonly verdict: StudyVerdict;
}

/** Precision of a method from groups that did the same, in the unit of the values. */
export interface InterlaboratoryStudy {
  /** The groups, in the order given. */
  readonly groups: readonly GroupConsistency[];
  /** Mean of all results. */
  readonly mean: number;
  /** Standard deviation of the means of the groups. */
  readonly deviationOfMeans: number;
  /** Standard deviation between groups s_L, 0 where the means differ by no more than the scatter within explains. */
  readonly betweenDeviation: number;
  /** Repeatability standard deviation s_r: one group, one frame, one day. */
  readonly repeatability: number;
  /** Reproducibility standard deviation s_R: any group; never below s_r. */
  readonly reproducibility: number;
  /** Repeatability limit r = 2.8 s_r: two results of one group differ by less in 95 % of cases. */
  readonly repeatabilityLimit: number;
  /** Reproducibility limit R = 2.8 s_R: the same for two groups. */
  readonly reproducibilityLimit: number;
  /** What h exceeds by chance in a share α, either way [1]. */
  readonly criticalH: number;
  /** Level α of h and k [1]. */
  readonly alpha: number;
  /** Cochran's test. */
  readonly cochran: CochranTest;
  /** Grubbs's test of the means. */
  readonly grubbs: GroupMeanTest;
  /** Groups whose mean or scatter stands out; nothing is left out. */
  readonly findings: readonly Finding[];
}

/** Why there is no precision. */
export type StudyReason = 'too-few-groups' | 'no-repeats' | 'no-scatter';
