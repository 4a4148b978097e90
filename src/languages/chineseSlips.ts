import type { SlipKey } from '../teaching/index.js';
import type { SlipWords } from './Language.js';

const dimensions = '重新测量截面，并与所输入的值及其单位核对。';
const forceUnit = '查看力列的单位，并将一个力值与显示值比较。';
const strainUnit = '查看文件中应变列的单位。';
const extensionUnit = '查看延伸列或位移列的单位，并将该列最后一个值与试样比较。';

/** @internal Slips of students in Chinese, by their keys. */
export const chineseSlips: Readonly<Record<SlipKey, SlipWords>> = {
  // mistakes that explain properties as well, in their words
  'radius-for-diameter': { slip: '把半径作为直径输入。', advice: dimensions },
  'diameter-doubled': { slip: '输入了直径的两倍。', advice: dimensions },
  'section-a-tenth': { slip: '截面各尺寸按十分之一输入。', advice: dimensions },
  'section-tenfold': { slip: '截面各尺寸按十倍输入。', advice: dimensions },
  'section-in-inches': { slip: '截面以英寸输入。', advice: dimensions },
  'section-converted-twice': { slip: '以 mm 表示的截面被当作英寸并换算。', advice: dimensions },
  'piece-in-inches': { slip: '截面和长度以英寸输入。', advice: dimensions },
  'lengths-in-inches': { slip: '试样的长度以英寸输入。', advice: '将所输入的长度及其单位与试样核对。' },
  'force-in-kilonewtons': { slip: '力的单位是 kN 而被读作 N。', advice: forceUnit },
  'newtons-as-kilonewtons': { slip: '力的单位是 N 而被读作 kN。', advice: forceUnit },
  'force-in-kilograms-force': { slip: '力的单位是 kgf 而被读作 N。', advice: forceUnit },
  'newtons-as-kilograms-force': { slip: '力的单位是 N 而被读作 kgf。', advice: forceUnit },
  'force-in-pounds-force': { slip: '力的单位是 lbf 而被读作 N。', advice: forceUnit },
  'newtons-as-pounds-force': { slip: '力的单位是 N 而被读作 lbf。', advice: forceUnit },
  'strain-in-percent': { slip: '应变以 % 表示而被读作比值。', advice: strainUnit },
  'ratio-as-percent': { slip: '应变是比值而被读作 %。', advice: strainUnit },
  'strain-in-microstrain': { slip: '应变以 µm/m 表示而被读作比值。', advice: strainUnit },
  'extension-in-inches': { slip: '延伸以英寸表示而被读作 mm。', advice: extensionUnit },
  'extension-in-micrometres': { slip: '延伸以 µm 表示而被读作 mm。', advice: extensionUnit },
  // someone who computes by hand
  'square-for-circle': { slip: '把直径的平方当作面积。', advice: '圆形截面的面积为 π d²/4：漏了系数 π/4。' },
  'area-in-square-centimetres': {
    slip: '面积以 cm² 代入，因此答案的单位是 N/cm²。',
    advice: '面积应以 mm² 代入：N/mm² 即 MPa，1 cm² 为 100 mm²。',
  },
  'area-in-square-metres': {
    slip: '面积以 m² 代入，因此答案的单位是 Pa。',
    advice: '面积应以 mm² 代入，或将以帕斯卡为单位的值除以一百万。',
  },
  'answer-in-psi': { slip: '答案的单位是磅力每平方英寸。', advice: '答案应以 MPa 给出：1 MPa 为 145.04 psi。' },
  'answer-in-gigapascals': { slip: '答案的单位是 GPa。', advice: '答案应以 MPa 给出：1 GPa 为 1000 MPa。' },
  'percent-for-ratio': { slip: '要求的是比值，给出的却是百分数。', advice: '比值为百分数值的百分之一。' },
  'ratio-for-percent': { slip: '要求的是百分数，给出的却是比值。', advice: '比值乘以 100 即为百分数值。' },
  // on the way to Rm and Rp0.2
  'final-area': { slip: '最大力除以了断后横截面积。', advice: 'Rm 按原始横截面积 S0 计算：缩颈在最大力之后才形成。' },
  'force-at-fracture': { slip: '用断裂时的力代替了最大力。', advice: '应取记录中最高的力；延性试样断裂时的力低于此值。' },
  'true-fracture-stress': { slip: '断裂时的力除以了断后横截面积。', advice: '这是断裂时的平均真应力。Rm 是最大力除以原始横截面积。' },
  'true-stress': { slip: '给出的是最大力时的真应力。', advice: 'Rm 是工程应力：不要乘以 1 + e。' },
  'force-for-stress': { slip: '给出的是以 N 表示的最大力。', advice: '应将力除以原始横截面积。' },
  'proof-for-maximum': { slip: '给出的是规定塑性延伸强度，而不是抗拉强度。', advice: 'Rm 是整条曲线的最高应力。' },
  'maximum-for-proof': {
    slip: '给出的是抗拉强度，而不是规定塑性延伸强度。',
    advice: 'Rp0.2 是偏移 0.2 % 的直线与曲线交点处的应力，该点在曲线的拐弯处附近。',
  },
  'handbook-modulus-on-travel': {
    slip: '在仍含试验机变形的位移曲线上，用手册中的弹性模量画了偏移直线。',
    advice: '应按曲线自身的斜率画直线；这样试验机的变形不再影响规定延伸。',
  },
  'origin-not-moved': { slip: '规定延伸从位移的零点算起，其中含有间隙。', advice: '应将弹性直线延长到零应力，规定延伸从该点算起。' },
  'total-for-plastic': {
    slip: '读取的是总延伸率 0.2 % 时的应力。',
    advice: '0.2 % 指塑性延伸率：应过应变 0.2 % 处画弹性斜率的直线，而不是画竖直线。',
  },
  'offset-ten-times': { slip: '直线偏移了 2 %，而不是 0.2 %。', advice: '0.2 % 写成比值是 0.002。' },
  'offset-one-tenth': { slip: '直线偏移了 0.02 %，而不是 0.2 %。', advice: '0.2 % 写成比值是 0.002。' },
  // on the way to slopes, extensions and readings of the broken piece
  'frame-left-in': { slip: '位移中仍含有试验机的变形。', advice: '计算应变之前，应从位移中扣除柔度与力的乘积。' },
  'frame-taken-out': { slip: '从位移中扣除了试验机的变形。', advice: '斜率 mE 是所记录曲线的斜率；扣除试验机的变形后，斜率为 E。' },
  'gauge-for-parallel-length': { slip: '应变按原始标距 L0 计算。', advice: '位移分布在平行长度 Lc 上：应除以平行长度。' },
  'secant-to-proof': { slip: '斜率取自原点到规定塑性延伸强度的割线。', advice: '该割线含有塑性延伸：只应拟合直线段。' },
  'one-point-for-slope': {
    slip: '只用一个点相除：其应力除以从位移零点算起的应变。',
    advice: '直线段之前有间隙：应在直线段上取斜率，即应力增量除以应变增量。',
  },
  'fracture-for-maximum': {
    slip: '给出的是断裂时的延伸率，而不是最大力时的延伸率。',
    advice: '应读取最高的力所对应的延伸率；此后只有缩颈继续发展。',
  },
  'true-strain': { slip: '给出的是真应变。', advice: '延伸率是工程应变：不要取对数。' },
  'parallel-for-gauge-length': { slip: '标距的伸长除以了平行长度。', advice: 'A 为 (Lu − L0)/L0，两者均在标记之间测量。' },
  'parallel-length-taken-off': { slip: '把平行长度当作了原始标距。', advice: 'L0 是试验前标记之间的距离，不是试样平行部分的长度。' },
  'final-length-as-base': { slip: '标距的伸长除以了断后标距。', advice: '应除以原始标距 L0。' },
  'original-not-taken-off': { slip: '断后标距除以原始标距后没有减去 1。', advice: 'A 为 (Lu − L0)/L0。' },
  'curve-for-marks': { slip: '断裂总延伸率取自曲线。', advice: '这是按平行长度计算的 At，含弹性部分。A 应在拼合的断样上由标记测得。' },
  'travel-for-marks': {
    slip: '断裂时的全部位移除以了原始标距。',
    advice: '位移含有间隙、试验机的变形和标记以外部分的伸长。A 应在拼合的断样上由标记测得。',
  },
  'maximum-for-fracture': { slip: '给出的是最大力时的延伸率。', advice: '这是 Agt。A 应在断后试样上由标记测得。' },
  'diameter-for-area': { slip: '给出的是直径的收缩率。', advice: 'Z 比较的是面积：应先将直径平方。' },
  'final-area-as-base': { slip: '横截面积的减小除以了断后横截面积。', advice: '应除以原始横截面积 S0。' },
  'remaining-area': { slip: '给出的是剩余横截面积所占的比例。', advice: 'Z 是减小部分所占的比例：(S0 − Su)/S0。' },
  'elongation-for-reduction': { slip: '给出的是断后伸长率。', advice: 'Z 比较的是试验前后的横截面积，不是长度。' },
};
