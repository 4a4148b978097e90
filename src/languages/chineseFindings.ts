import type { FindingCode } from '../base/index.js';
import type { FindingWords } from './Language.js';

/** @internal Findings in Chinese. */
export const chineseFindings: Readonly<Record<FindingCode, FindingWords>> = {
  // the record
  'time-missing': {
    message: '记录中没有时间列，因此速率、停顿和加载的均匀性均无法得知。',
    remedy: '每个采样点都应记录时间；不假定任何时间间隔。',
  },
  'time-not-increasing': {
    message: '时间倒退 {count} 次，首次出现在第 {first} 个采样点；不给出速率。',
    remedy: '检查记录仪的时钟，或检查一个文件中是否含有两次试验。',
  },
  'time-gap': {
    message: '时间上有 {count} 处间断，最长 {longest} s，位于第 {first} 个采样点；通常每 {usual} s 一个采样点。',
    remedy: '检查屈服、最大力和断裂处是否有间断；记录仪在这些时刻停顿，就会丢失该现象。',
  },
  'time-unit-changes': {
    message: '从第 {sample} 个采样点起，时间间隔为此前的 {factor} 倍：使用了两种时间单位，或时钟被重新设定。',
    remedy: '按记录仪的采样频率重建时间（`rebuildTime`），或不使用时间；跨越该变化处的速率没有意义。',
  },
  'time-coarse': {
    message: '{share} % 的采样点与前一点的时间相同：时钟的步长为 {step} s，比采样间隔粗。',
    remedy: '用更多位数记录时间，或按记录仪的采样频率重建时间（`rebuildTime`）。',
  },
  'time-unit-unlikely': {
    message: '{duration} s 内有 {samples} 个采样点，每 {usual} s 一个：手动加载不可能如此，时间单位可能有误。',
    remedy: '读取文件时指明时间单位。',
  },
  'force-sign-reversed': {
    message: '力下降到 {lowest} N，而最高只上升到 {highest} N：拉力很可能被记为负值。',
    remedy: '将力的符号反转（`reverseSign`），并检查接线或记录仪的符号约定。',
  },
  'channels-exchanged': {
    message: '位移在第 {sample} 个采样点从最大 {highest} mm 骤降，而力保持在 {force} N：力与位移两列可能对调。',
    remedy: '读取文件时指定各列（`columns`），并检查记录仪的插头。',
  },
  'motion-sign-reversed': {
    message: '力上升时，{column}通道从 {first} 变到 {last} {unit}：其符号相反。',
    remedy: '将其符号反转（`reverseSign`），并检查记录仪的符号约定。',
  },
  spikes: {
    message: '{column}通道有 {count} 个尖峰，最大的一个偏离相邻点 {largest} {unit}，位于第 {first} 个采样点。',
    remedy: '除非关闭该功能，尖峰将由相邻点之间的直线代替；查找松动的插头或干扰。',
  },
  'signal-drops-out': {
    message: '{column}通道从第 {first} 个采样点起有 {count} 个采样点无读数，之后恢复。',
    remedy: '检查插头和电缆；这段时间内的试验情况无从得知。',
  },
  'signal-strays': {
    message: '{column}通道在第 {first} 个采样点突然偏离其曲线 {height} {unit}，随后又突然跳回；受影响的采样点：{count} 个。试样和驱动很少会这样。',
    remedy: '除非关闭该功能，这些采样点将由直线代替；这段时间内的试验情况无从得知。查找松动的插头、干扰或触碰电缆的手。',
  },
  'force-bulges': {
    message: '力在第 {first} 个采样点偏离其曲线 {height} N，随后又回到曲线上；受影响的采样点：{count} 个。在位移如此继续的情况下，试样和驱动都不会这样。',
    remedy: '除非关闭该功能，这些采样点将由直线代替；这段时间内的试验情况无从得知。查找对机架的碰撞、触碰电缆的手或变送器受到的干扰。',
  },
  'signal-noisy': {
    message: '{column}通道的噪声为 {noise} {unit}，占其变化范围的 {share} %。',
    remedy: '对信号加以屏蔽并接地；每个值都含有这一分散性。',
  },
  'reading-coarse': {
    message: '{column}通道的读数步长为 {step} {unit}，整个试验共 {counts} 步。',
    remedy: '选用记录仪更细的量程或更精细的传感器可得到更多位数；步数少于几百时，分辨力会限制由其读出的量：由力得到的强度，由位移得到的应变和深度。',
  },
  'motion-saturated': {
    message: '最后 {count} 个采样点中{column}通道停在终值 {value} {unit}，而力仍在变化：传感器很可能已到行程终点。',
    remedy: '检查传感器的行程；此后的应变偏小。',
  },
  'late-tare': {
    message: '在第 {sample} 个采样点，力在没有任何运动时被清零，变化量为 {step} N；此前的数值以另一零点为准。',
    remedy: '无需处理；清零应在试样两端夹紧之前进行。',
  },
  'zero-before-loading': {
    message: '加载前力的读数为 {force} N，占其最大值的 {share} %。',
    remedy: '如果当时试样只夹持了一端，应将其扣除（`tare`）；清零应在试样两端夹紧之前进行。',
  },
  'zero-after-fracture': {
    message: '断裂后力的读数为 {force} N，占其最大值的 {share} %，而加载前没有可用来确定零点的记录段。',
    remedy: '加载前先记录几秒钟；所有的力值都可能含有这一零点偏移。',
  },
  'grip-slip': {
    message: '在第 {sample} 个采样点，试样在夹头中打滑：{column}通道出现 {way} {unit} 的变化，无法用力的变化解释（力下降了 {fall} N）。',
    remedy: '清洁或更换夹块；若不将打滑量消除（`joinSlips`），打滑之后由位移得到的应变偏大。Rm、ReH 和 ReL 不受影响；其后的规定塑性延伸强度和伸长值受影响。',
  },
  'drive-reversed': {
    message: '在第 {sample} 个采样点，驱动装置使{column}通道退回 {way} {unit}，力随之下降 {fall} N：试样被卸载后又重新加载。',
    remedy: '应沿一个方向加载；评定时略去这一段，曲线仍保留（`loadingEnvelope` 也会将其从记录中去掉）。',
  },
  'motion-backlash': {
    message: '在第 {sample} 个采样点，{column}通道退回 {way} {unit}，远大于力下降 {fall} N 所对应的量：驱动装置或传感器存在间隙。',
    remedy: '检查丝杠、销轴或传感器的间隙；附近的应变值得怀疑。',
  },
  'force-zero-moved': {
    message: '在第 {sample} 个采样点，力突然下降 {fall} N，并由此继续变化：试验中力的零点被移动。',
    remedy: '只有确认是这种情况时才可将力接续（`restoreZero`）；试样受力时切勿按清零键。',
  },
  'motion-jumps': {
    message: '力连续变化时{column}通道跳变 {count} 次，其中第 {sample} 个采样点处为 {largest} {unit}：传感器打滑或被重新设定。',
    remedy: '如果没有人触碰过试样，可将各段接续（`joinJumps`）；跨越跳变处的延伸值得怀疑。',
  },
  'extensometer-slipped': {
    message: '力沿弹性直线继续变化时，{column}通道突然回退 {count} 次，最大 {largest} {unit}，在第 {sample} 个采样点：引伸计打滑。',
    remedy: '清洁并压紧刀口；将各段接续（`joinJumps`），或使弹性窗口避开该处：回退打滑使斜率偏大。',
  },
  'channels-out-of-step': {
    message: '力与运动相差 {samples} 个采样点：如此平移后两者速率的相关系数为 {correlation}，按原记录则为 {without}。',
    remedy: '用同一时钟记录两个通道，或将其对齐（`alignChannels`）；时间滞后会使弹性直线弯曲。',
  },
  'several-tests': {
    message: '记录中含有 {count} 次试验，第二次从第 {second} 个采样点开始。',
    remedy: '为每次试验单独建立文件，或将记录拆分（`splitTests`），并分别评定。',
  },
  'file-cut-off': {
    message:
      '文件在第 {line} 行中间结束（{text}）：其后没有换行符，且单元格或数字位数少于上面各行。该行已略去；记录仪在其后写了什么不得而知。',
    remedy: '请从记录仪重新复制该文件；试样是否断裂，此文件中没有记录。',
  },
  'channel-empty': {
    message: '{column}通道中不足两个数值：传感器未装上，或未被记录。',
    remedy: '检查该列；试验按没有该列求值。',
  },
  'samples-repeated': {
    message: '{share} % 的采样点与前一点重复：记录仪比传感器快。',
    remedy: '重复的采样点会使斜率的分散性显得过小；应按最慢的传感器的速率记录。',
  },
  'force-saturated': {
    message: '力在其最大值 {force} N 处停留了 {count} 个采样点：该通道已到量程上限，或试样在此力下屈服。',
    remedy: '检查变送器和记录仪的量程；真实的最大力以及位于平顶上的强度可能更高。',
  },
  'force-does-not-rise': {
    message: '力始终没有上升：开始时为 {first} N，最高仅 {highest} N。',
    remedy: '检查力的符号和所在列，以及文件中是否含有加载段。',
  },
  'force-looks-like-kilonewton': {
    message: '最大应力 {stress} MPa 对金属而言过低：力的单位可能是 kN，而此处应为 N。',
    remedy: '读取文件时指明力的单位。',
  },
  'strain-looks-like-percent': {
    message: '应变 {strain} 与斜率 {slope} MPa 不符合金属的特征：应变可能以 % 表示，而此处应为比值。',
    remedy: '读取文件时指明应变的单位。',
  },
  'record-starts-late': {
    message: '第一个采样点已达到最大力的 {share} %：缺少加载的起始部分。',
    remedy: '应在加载前启动记录仪；力的零点无法核查。',
  },
  'zero-drift': {
    message: '断裂后力的读数与试验前的零点相差 {force} N（最大力的 {share} %）。',
    remedy: '每次试验前后检查力通道的零点；所有的力值都含有这一疑问。',
  },
  'repair-without-effect': { message: '所要求的修复 {repair} 未作任何改变：{why}。', remedy: '请去掉它，或在记录检查中查看哪些修复会起作用。' },
  'tail-after-fracture': {
    message: '断裂后的 {count} 个采样点未计入；它们已用于核查零点。',
    remedy: '无需处理。',
  },
  'fracture-not-recorded': {
    message: '记录中没有力的突然下降；以最后一个采样点作为断裂点。',
    remedy: '应记录到试样断裂为止；记录过早截断会使断裂时的延伸偏小；若力仍在上升，最大力也偏小。',
  },
  'stopped-before-fracture': {
    message: '记录在试样断裂之前结束，此时力为其最大值的 {share} %。',
    remedy: '应记录到断裂为止；如果已越过最大力，强度仍可能有效。',
  },
  'maximum-at-end': {
    message: '最大力位于记录末尾：试验或其记录提前停止，或试样在最大力处断裂。',
    remedy: '说明属于哪一种情况（拉伸试样可由断后的 Lu、Su 判断）；未在该处断裂的试样，其强度只是至少这么大，最大力下的延伸未知。',
  },
  'maximum-is-spike': {
    message: '最大值只是一个孤立的采样点，比相邻点高 {excess} MPa。',
    remedy: '报告强度之前，先检查信号中是否有尖峰。',
  },
  'few-points-in-elastic-part': {
    message: '弹性直线仅依据 {points} 个采样点，宜有 {wanted} 个。',
    remedy: '提高采样频率或放慢加载。',
  },
  'modulus-of-few-points': {
    message: '弹性直线依据 {points} 个采样点，少于求模量所需的 {least} 个：不给出 E。',
    remedy: '在弹性段提高采样频率或放慢加载。',
  },
  'modulus-of-scatter': {
    message: '斜率的相对标准误差为 {error} %，超过模量所允许的 {limit} %：不给出 E。',
    remedy: '降低噪声或在弹性段多记录采样点；宜不超过 1 %。由该直线算起的原点与偏移处的应力同样可疑。',
  },
  'sampling-slow-for-yield': {
    message: '应力速率为 {rate} MPa/s 时每秒采样 {frequency} 次：上屈服强度最多可能偏低 {loss} MPa。',
    remedy: '在屈服附近提高采样频率或放慢加载。',
  },
  'extension-goes-back': {
    message: '{column}通道回退 {count} 次，最大 {largest} {unit}。',
    remedy: '间隙、驱动装置换向或试验机卸载都会造成这种现象；直线和交点的求取已考虑这一点。',
  },
  'extensometer-taken-off': {
    message: '引伸计的{column}通道在第 {sample} 个采样点结束，读数为 {reading} {unit}。',
    remedy: '无需处理；此后的应变采用另一种依据。',
  },
  'extensometer-stands': {
    message: '引伸计的{column}通道从第 {sample} 个采样点起停在 {reading} {unit} 附近，而试验仍在继续：引伸计已取下或已到行程终点，只计到该处为止。',
    remedy: '记录取下引伸计的时刻；此后的应变由横梁位移得出，没有横梁位移时则不给出。',
  },
  'extensometer-falls-back': {
    message: '引伸计的{column}通道在第 {sample} 个采样点从 {reading} {unit} 回落，超过试样可能的回缩，且不再恢复：引伸计已取下、滑动或被重新置零，只计到该处为止。',
    remedy: '试验中不要置零；此后的应变由横梁位移得出，没有横梁位移时则不给出。只有确系如此时才连接各段（`joinJumps`）。',
  },
  'travel-carries-on': {
    message: '应变超过 {strain} 后，曲线由横梁位移接续，按 {length} mm 长度计算。',
    remedy: '缩颈开始后两种依据不再一致；此后的延伸为估计值。',
  },
  pause: {
    message: '横梁在应变 {strain} 处静止 {duration} s；应力从 {from} MPa 变为 {to} MPa。',
    remedy: '横梁静止时力的下降是松弛，绝不是屈服。',
  },
  'pauses-many': {
    message: '从第 {first} 个到第 {last} 个采样点，横梁静止 {count} 次，共 {total} s；最长的停顿为 {duration} s，位于应变 {strain} 处。',
    remedy: '手动泵的行程会造成停顿；应在一个行程内通过屈服，或更均匀地泵压。',
  },
  'pause-near-yield': {
    message: '距 {symbol} 不到 0.2 % 应变处的停顿有 {count} 次，最长一次为 {duration} s。',
    remedy: '屈服过程中应不停顿地加载；如果该值起决定作用，应重新试验。',
  },
  'uneven-loading': {
    message: '弹性窗口内速度的变化为 {variation} %（标准差除以平均值）。',
    remedy: '以均匀的泵压或转动加载；参见速率随时间变化图。',
  },
  // the test piece
  'gauge-length-not-proportional': {
    message: '原始标距 {length} mm 与 5.65√S0 = {proportional} mm 相差 {deviation} %：书写 A 时必须带下标。',
    remedy: '以原始标距作为 A 的下标（A80mm），标距为 11.3√S0 时以系数为下标（A11.3），或在 ISO 2566 的适用范围内按其换算。',
  },
  'parallel-length-assumed': {
    message: '未给出平行长度；以原始标距 {length} mm 代替。',
    remedy: '给出平行长度：由位移得到的全部塑性应变都以该长度为基准。',
  },
  'parallel-length-short': {
    message: '平行长度 {length} mm 小于该截面和原始标距所要求的最小值 {least} mm。',
    remedy: '平行长度应不小于该值。',
  },
  'extensometer-length-unsuited': {
    message: '引伸计标距 {length} mm 不在 {least} 至 {most} mm 之间（原始标距的一半至平行长度的十分之九）。',
    remedy: '采用该范围内的标距；对最大力时及之后的延伸，标距应接近原始标距。',
  },
  'section-small': {
    message: '{dimension}为 {value} mm，小于 {limit} mm：应采用标准的另一附录。',
    remedy: '按薄板或线材的附录执行。',
  },
  'section-wide': {
    message: '宽厚比为 {ratio}，大于 8。',
    remedy: '较窄的试样缩颈更均匀；报告 A 和 Z 时注明尺寸。',
  },
  'section-spread': {
    message: '截面各次读数的分散为其平均值的 {spread} %。',
    remedy: '重新测量；超过 0.5 % 时，不是试样不均匀就是读数不一致。',
  },
  'section-taper': {
    message: '截面从一端到另一端变化 {taper} %。',
    remedy: '检查机加工；试样会在最小截面处断裂。',
  },
  'few-section-readings': {
    message: '截面的每个尺寸仅依据 {readings} 个读数。',
    remedy: '至少在三处测量；圆形试样应在两个方向上测量。',
  },
  'after-fracture-missing': {
    message: '未测定 {symbol}：未给出{missing}。',
    remedy: '将断裂的试样对接在一起测量标距；在两个方向上测量缩颈处。',
  },
  'after-fracture-larger': {
    message: '断后的{what}（{after}）与原始值（{before}）不相符。',
    remedy: '检查读数：标距应增大，截面应减小。',
  },
  'reduction-unusual': {
    message: 'Z = {reduction} % 与 A = {elongation} % 并列时不寻常。',
    remedy: '检查断后读数；只有纯金属和铅才会缩颈到几乎为零。',
  },
  'elongation-unlike-travel': {
    message: '由标记得到的 A = {elongation} % 与由曲线得到的 {travel} % 不一致。',
    remedy: '查找长度错误、夹头打滑或单位错误。',
  },
  // the frame
  'extension-from-travel': {
    message: '应变由横梁位移测定，而不是按标准要求由引伸计测定。',
    remedy: '在每个基于应变的值旁注明；该值起决定作用时应使用引伸计。',
  },
  'frame-compliance-removed': {
    message: '已扣除试验机柔度 {compliance} mm/N；它占弹性段位移的 {share} %。',
    remedy: '说明柔度的来源及其不确定度：未给出时，E 的不确定度不包含它。',
  },
  'frame-stretches-more-than-piece': {
    message: '试验机的变形为试样的 {ratio} 倍：E 的相对不确定度至少为柔度相对不确定度的 {ratio} 倍。未给出柔度的不确定度时，E 的不确定度不包含它。',
    remedy: '测定 E 应使用引伸计。',
  },
  'modulus-includes-frame-compliance': {
    message: '应变由横梁位移测定，而不是按标准要求在试样上测定：斜率 {slope} MPa 是试验机与试样合在一起的斜率，不给出 E。按总应变计的量（拉伸时为 Agt、At）也含试验机的变形，按塑性应变计的量不含。',
    remedy: '给出试验机柔度，或使用引伸计；在每个基于应变的值旁注明由横梁位移测定。按曲线自身斜率偏移求得的应力仍然正确。',
  },
  'compliance-too-large': {
    message: '给出的试验机柔度 {compliance} mm/N 为行程所示位移的 {share} %：没有给试样留下任何变形。该柔度未被扣除；依据行程的数值属于试验机与试样合在一起。',
    remedy: '以 mm/N 给出柔度（20 µm/kN 即 2e-5 mm/N），或用试验时的夹具重新测量。',
  },
  'compliance-vanishing': {
    message: '给出的试验机柔度 {compliance} mm/N 只扣除了弹性段位移的 {share} %：斜率是试验机与试样合在一起的斜率，不给出 E。',
    remedy: '以 mm/N 给出柔度（20 µm/kN 即 2e-5 mm/N），或用试验时的夹具测量。',
  },
  'displacement-steps-coarse': {
    message: '位移读数的一个步长为 {symbol} 规定延伸的 {share} %。',
    remedy: '使用更精细的位移传感器：步长宜为规定延伸的十分之一。',
  },
  // the evaluation
  'window-bound-eased': {
    message: '没有满足全部界限的弹性窗口（{why}）；已放宽对{bound}的要求。',
    remedy: '采样点太少时，在弹性段提高采样频率；否则取较小的比例，或自行选定窗口。',
  },
  'no-linear-part': {
    message: '曲线中找不到直线段（{why}）。不给出 E，依赖该直线的量也不可靠：{symbols}。',
    remedy: '由卸载线或其他方法求 E。曲线弯曲时其直线偏平，规定塑性延伸强度偏大：应报告规定总延伸强度，并把各延伸率视为估计值。若是噪声使各窗口不一致，应采集更平稳的记录。',
  },
  'window-not-linear': {
    message: '指定的窗口不是直线段（{why}），与曲线其余部分无关。不给出 E，依赖该窗口直线的量也不可靠：{symbols}。',
    remedy: '另行指定窗口，或由程序搜索窗口。',
  },
  'linear-part-unknown': {
    message: '弹性直线是否位于直线段上无从得知：其 {points} 个采样点只有 {strains} 个不同的应变，显示不出弯曲，也没有其他窗口可供比较。不给出 E。',
    remedy: '在弹性段采集更多采样点和更细的应变。',
  },
  'slope-over-slip': {
    message: '引伸计在弹性窗口内打滑（第 {sample} 个采样点）：若在该处接续，直线斜率为 {joined} MPa，即打滑使斜率改变 {change} %；不给出 E。',
    remedy: '将各段接续（`joinJumps`），或指定避开打滑处的窗口；由此直线偏移求得的应力带有同样的误差。',
  },
  'slope-above-others': {
    message: '斜率 {slope} MPa 高于所有其他窗口的斜率（{lowest} 至 {highest} MPa），超出噪声所能解释的程度：或者刀口在窗口内缓慢回退，使斜率偏大；或者试样在其下方被拉直，使其他窗口偏小。E 的不确定度包含这两种情形（{share} %）。',
    remedy: '查看弹性段细节；重新装夹引伸计并重做试验，或指定避开回退处的窗口。两侧测量可发现弯曲的试样。',
  },
  'slope-scatter': {
    message: '斜率的相对标准误差为 {error} %。',
    remedy: '降低噪声或增加采样点；宜不超过 1 %。',
  },
  'strain-noise-flattens': {
    message: '应变噪声（{noise}）使弹性直线偏平约 {share} %；斜率保持不变，其不确定度已计入此项。',
    remedy: '减小引伸计或其信号的噪声，或指定更长的窗口：影响与噪声和窗口之比的平方成正比。',
  },
  'strain-steps-open': {
    message: '弹性直线只跨越应变读数的 {steps} 个分度（每个 {step}）：斜率因此有 {share} % 不能确定，其不确定度已计入此项。',
    remedy: '采用更细的应变读数，或指定更长的窗口：分度数增至三倍，此项减为五分之一。',
  },
  'strain-steps-few': {
    message: '弹性直线只跨越应变读数的 {steps} 个分度（每个 {step}）：斜率因此有 {share} % 不能确定，超过给出 E 的界限 {limit} %。不给出 E。',
    remedy: '采用更细的应变读数；由此直线偏移求得的应力带有同样的疑问。',
  },
  'windows-disagree': {
    message: '弹性直线（{slope} MPa）不稳健：另外 {windows} 个窗口给出的斜率为 {lowest}～{highest} MPa，0.2 % 偏移处的应力为 {low}～{high} MPa；斜率的不确定度使该偏移移动 {share} %。',
    remedy: '查看弹性段局部图；报告该范围，或注明所用窗口。曲线弯曲时，这些斜率都偏小：该范围不包含真值。',
  },
  'window-slopes-disagree': {
    message: '弹性直线（{slope} MPa）不稳健：另外 {windows} 个窗口给出的斜率为 {lowest}～{highest} MPa。',
    remedy: '查看弹性段局部图；报告该范围，或注明所用窗口。曲线弯曲时，这些斜率都偏小：该范围不包含真值。',
  },
  'windows-fall': {
    message: '弹性直线（{slope} MPa）不稳健：另外 {windows} 个窗口给出的斜率最高为 {highest} MPa，其中有些为负值，即应力上升时其应变后退。',
    remedy: '查看弹性段局部图及位移信号：其噪声、分度，或扣除过多的柔度。',
  },
  'residuals-alike': {
    message: '弹性直线的相邻残差彼此相似（游程数为 {runs}，随机残差的期望值为 {expected}）：其标准误差偏小。',
    remedy: '滤波或记录仪的采样频率使采样点相关，或窗口内曲线弯曲；应把标准误差看作下限。',
  },
  'window-bent': {
    message: '在弹性窗口内拟合的抛物线，其斜率从一端到另一端变化 {change} %。',
    remedy: '查看弹性段局部图：起始非线性段或屈服已进入窗口。',
  },
  'slope-implausible': {
    message: '模量 {slope} MPa 超出金属所在的 {lowest}～{highest} MPa 范围。',
    remedy: '检查单位、面积（是否把半径当作直径？）、长度和试验机柔度。',
  },
  'offset-leverage': {
    message: '杠杆作用为 {leverage} 时，斜率的不确定度使 {symbol} 的规定延伸移动 {share} %；过窗口中点、斜率相应偏小或偏大的直线与曲线相交于 {low}～{high} MPa。',
    remedy: '使用引伸计或更平稳的记录：该值取决于斜率。',
  },
  'toe-long': {
    message: '起始非线性段占用应变 {shift}，为窗口顶端弹性应变的 {share} %。',
    remedy: '施加预载使夹头贴紧；原点已移到直线与零应力的交点。',
  },
  'toe-outside-record': {
    message: '直线与零应力相交于应变 {shift} 处，早于记录的起点。',
    remedy: '记录开始过晚，或起始部分比直线更陡；检查零点和预载。',
  },
  'no-yield-point': {
    message: '没有上屈服强度：{why}。',
    remedy: '报告规定塑性延伸强度。',
  },
  'yield-fall-in-pause': {
    message: '应力只在横梁静止时下降：这是松弛，不是屈服。',
    remedy: '屈服过程中应不停顿地加载。',
  },
  'ends-before-hardening': {
    message: '试验在屈服平台上、硬化开始之前结束：ReL（{lower} MPa）只是到此为止的最低应力；ISO 6892-1 在此不定义 Rm，所给的值至少为平台的最高应力，而不是 ReH（{upper} MPa）；不给出 Ae、Ag 和 Agt。',
    remedy: '注明 ReL 是硬化前的值；要得到 Rm、Ae 和 Agt，应拉伸到最大力。',
  },
  'no-hardening': {
    message: '屈服平台（其上 ReL 为 {lower} MPa）之后没有硬化：ISO 6892-1 在此不定义 Rm。以平台的最高应力代之，而不是 ReH（{upper} MPa）；不给出 Ae、Ag 和 Agt。',
    remedy: '报告 ReH 和 ReL；若要求强度，应商定以何值代之。',
  },
  'lower-yield-in-dips': {
    message: 'ReL（{lowest} MPa）位于屈服期间 {count} 次短暂力下降之一，力每次都恢复；位移噪声掩盖了它们是驱动的泵冲程还是材料本身所致：不计它们时 ReL 为 {level} MPa。',
    remedy: '在 ReL 和 Ae 旁注明这一点；用一个冲程通过屈服，或记录能显示驱动是否后退的位移。',
  },
  'falls-slip-or-yield': {
    message: '屈服期间力突然下降 {count} 次，又沿弹性线恢复，行程合计多走 {way} mm：是夹头打滑还是材料突然屈服，行程无法区分。计入这些下降时 ReL 为 {lowest} MPa，不计时为 {level} MPa。Ae 未给出：若为打滑则为 {least}，若为材料则为 {most}。',
    remedy: '查看试样头部有无钳口痕迹：试样打滑时把滑移去除（`repairs.slips`）；否则 ReL 有效。下降之后由行程得到的应变可能含有这段位移。覆盖平行长度的引伸计可以分辨。',
  },
  'few-points-before-proof': {
    message: '弹性窗口终点与 {symbol} 之间只有 {points} 个采样点。',
    remedy: '提高采样频率：采样点相距较远时，弦位于曲线下方。',
  },
  'several-crossings': {
    message: '曲线与 {symbol} 的直线相交 {count} 次；以第一个持续的交点为准。',
    remedy: '查看弹性段局部图；有明显屈服时应先报告 ReH 和 ReL。',
  },
  'proof-strength-not-reached': {
    message: '在最大力之前未达到 {symbol}：材料脆性，或试验提前停止。',
    remedy: '只报告强度。',
  },
  'total-extension-not-reached': {
    message: '记录中未达到 {symbol}。',
    remedy: '报告中不列出该值。',
  },
  'maximum-wide': {
    message: '力在 {width} 的应变范围内都处于其最大值的 {share} % 以内；噪声、读数台阶和给定的不确定度使 Agt 的标准不确定度为 {uncertainty}。',
    remedy: '给出 Agt 时附上其标准不确定度；力的漂移或该处加载速度的变化会使它在该范围内移动。',
  },
  'maximum-below-upper-yield': {
    message: '硬化开始后的最大值 {strength} MPa 低于上屈服强度 {upper} MPa。',
    remedy: '说明强度指的是哪一个。',
  },
  'proportional-limit-by-definition': {
    message: '比例极限因定义不同为 {lowest}～{highest} MPa。',
    remedy: '给出该值时注明所用的定义。',
  },
  'stress-rate-outside': {
    message: '按局部速率，弹性窗口中有 {share} % 是以 {lowest}～{highest} MPa/s 加载的（ISO 6892-1 方法 B），而要求为 90 %；应力速率的中位数为 {rate} MPa/s。',
    remedy: '以该范围内的速率加载；参见速率随时间变化图。',
  },
  'mean-stress-rate-outside': {
    message: '弹性窗口内的应力速率为 {rate} MPa/s，超出 {lowest}～{highest} MPa/s（ISO 6892-1 方法 B）；窗口内采样点太少，无法给出局部速率。',
    remedy: '以该范围内的速率加载，并提高采样频率。',
  },
  'strain-rate-high': {
    message: '{where}的应变速率为 {rate} 1/s，高于 {highest} 1/s（ISO 6892-1）。',
    remedy: '该处应放慢加载；速率高会使屈服值升高。',
  },
  'strain-rate-low': {
    message: '按局部速率，屈服过程中有 {share} % 的应变速率达到或超过 {lowest} 1/s（ISO 6892-1 方法 B，用于 ReL），而要求为 90 %；平均应变速率为 {rate} 1/s。',
    remedy: '屈服过程中应加快加载；速率低会使 ReL 降低。',
  },
  'hardening-correlation-low': {
    message: '硬化模型的拟合仅达到 R² = {correlation}。',
    remedy: '其他模型可能拟合得更好；查看真应力-真应变曲线。',
  },
  'necking-answers-differ': {
    message: '由曲线得到的缩颈起始真应变为 {curve}（u = {uncertainty}），由硬化模型得到的为 {law}。',
    remedy: '其他模型可能更符合这条曲线；外推之前应比较各模型。',
  },
  'necking-unlike-exponent': {
    message: '指数 n = {exponent} 与均匀真应变 {strain} 不符合 Considère 准则的要求。',
    remedy: '该模型不能适用到缩颈；给出 n 时注明拟合范围。',
  },
  'withheld-after-slip': {
    message: '未给出：{symbols}；试样此前在第 {sample} 个采样点于夹头中打滑，其应变最多会含有 {strain} 的打滑量。',
    remedy: '评定前消除打滑量（`repairs.slips`），或使用引伸计试验。',
  },
  'extensions-hold-slip': {
    message: '{symbols}：应变含有试样在第 {sample} 个采样点于夹头中的打滑量；这些值最多偏大 {strain}（应变）。',
    remedy: '评定前消除打滑量（`repairs.slips`），或在断后试样上测量伸长。',
  },
  'not-determined': {
    message: '未测定：{symbol}。原因：{why}。',
    remedy: '见原因：按所给要求，该记录不足以给出此值。',
  },
  // the material
  'dimension-looks-wrong': {
    message: '{symbol} = {value} {unit} 超出{family}的通常范围 {low}～{high} {unit}。{why}',
    remedy: '重新测量试样，与输入值核对后重新评定；未作任何修正。',
  },
  'unit-looks-wrong': {
    message: '{symbol} = {value} {unit} 超出{family}的通常范围 {low}～{high} {unit}。{why}',
    remedy: '读取文件时指明各列的单位并重新评定；未作任何修正。',
  },
  'strain-looks-wrong': {
    message: '{symbol} = {value} {unit} 超出{family}的通常范围 {low}～{high} {unit}。{why}',
    remedy: '检查应变中除试样外还含有什么：试验机、夹头、引伸计的安装。',
  },
  'unlike-family': {
    message: '{symbol} = {value} {unit} 超出{family}的通常范围 {low}～{high} {unit}。{why}',
    remedy: '检查材料及其状态。通常范围不是技术条件规定的极限值。',
  },
  'properties-contradict': {
    message: '{left} = {leftValue} {leftUnit} 与 {right} = {rightValue} {rightUnit} 相互矛盾：{rule}。',
    remedy: '检查两者是如何得到的；其中至少有一个，或其所依据的某个读数，是错误的。',
  },
  // verification of the frame
  'force-class-not-reached': {
    message: '{steps} 个校准点中有 {count} 个未达到 1 级，首个在 {force} N 处，受限于{term}。',
    remedy: '在该处不得声称力值符合 ISO 6892-1；查明原因，调整后重新检验。',
  },
  'rising-force-only': {
    message: '进回程相对误差 {reversibility} % 超出 1 级的允许值：该通道只适用于递增力。',
    remedy: '不得由该通道求卸载模量或滞后环；检查密封件和摩擦。',
  },
  'falling-above-rising': {
    message: '在 {force} N 处，回程的示值比进程大 {excess} N；油缸摩擦的作用正好相反。',
    remedy: '检查进程与回程是否互换，标准器是否漂移，以及传感器或标准器本身是否有滞后。',
  },
  'zero-not-verified': {
    message: '未给出零点读数，因此零点误差未知，级别仅由其他各项确定。',
    remedy: '每次测量循环后，在无力状态下读取示值。',
  },
  'displacement-steps-few': {
    message: '已检定的位移点：{steps} 个；其中从下方读数最少的一点为 {runs} 次。应为十个位移点、两个循环。',
    remedy: '在所用范围内约十个位移点上检定，每点两次。',
  },
  'verification-steps-few': {
    message: '量程 20 % 至 100 % 之间的校准点数为 {count}；宜有五个。',
    remedy: '约在量程的 20、40、60、80 和 100 % 处检验；若使用 20 % 以下的力，还应在 10、5、2 和 1 % 处检验。',
  },
  'range-not-reached': {
    message: '最高校准点为 {force} N，即量程的 {share} %；在此以上未经检验。',
    remedy: '检验到量程上限，或以最高校准点作为量程上限。',
  },
  'class-range-starts-high': {
    message: '1 级仅从 {force} N（量程的 {share} %）起成立；在此以下受限于{term}。',
    remedy: '安排试验时应使屈服高于该力。',
  },
  'friction-negative': {
    message: '有 {count} 个校准点算得的摩擦力小于零，最低为 {friction} N；摩擦不可能起助力作用。',
    remedy: '检查进程与回程是否互换，以及压力零点是否漂移。',
  },
  'pointer-above-record': {
    message: '指针示值为 {pointer} N，记录值为 {recorded} N：高出 {share} %。{cause}。',
    remedy: '报告经过检验的通道的值，并在旁边列出另一个值；查看记录中最大值附近的情况。',
  },
  'pointer-below-record': {
    message: '指针示值为 {pointer} N，记录值为 {recorded} N：低了 {share} %。{cause}。',
    remedy: '报告经过检验的通道的值，并在旁边列出另一个值；检查指针在整个刻度范围内是否运动自如。',
  },
  'idle-friction-changed': {
    message: '空行程需要 {force} N；以前为 {before} N，变化 {share} %。',
    remedy: '检查密封件、导向件和油；力的皮重已不同于以前。',
  },
  'idle-friction-uneven': {
    message: '在空行程中，摩擦力在 {force} N 左右变化 {spread} N。',
    remedy: '检查缸筒拉伤、活塞杆弯曲或油中进气；可向 `pressureToForce` 提供随位移变化的皮重。',
  },
  'leak-down-fast': {
    message: '静止时力每分钟下降 {share} %。',
    remedy: '在进行有保持时间的试验之前，检查阀、密封件或接头是否泄漏。',
  },
  'leak-down-settles': {
    message: '压力在前半段每分钟下降 {early} MPa，在后半段每分钟下降 {late} MPa：油、软管或试件仍未稳定。',
    remedy: '等待稳定后再读取泄漏量，或只读取后半段（`from`）。',
  },
  'check-out-of-limits': {
    message: '第 {index} 次核查的读数为 {value}，超出控制限 {lower}～{upper}。',
    remedy: '将核查重复一次；若仍超限，应停止试验，在发出结果之前查明原因。',
  },
  'check-jumped': {
    message: '第 {before} 次与第 {index} 次核查之间读数变化 {range}，大于 {limit}。',
    remedy: '查找两次之间改变了什么：操作者、试件、油、传感器。',
  },
  'check-on-one-side': {
    message: '连续 {count} 次核查（至第 {index} 次）都位于中心线{side}。',
    remedy: '水平已经移动：查找原因；若找不到原因，应对力进行检验。',
  },
  'check-trend': {
    message: '连续 {count} 次核查（至第 {index} 次）持续{direction}。',
    remedy: '存在漂移：应在达到控制限之前对力进行检验。',
  },
  'check-few': {
    message: '控制限仅依据 {count} 次核查；少于 20 次时为临时控制限。',
    remedy: '继续以均匀的间隔进行核查，约 20 次后确定控制限。',
  },
  'force-drifted': {
    message: '调整前的误差在 {force} N 处达到 {error} %（{date} 调整后为 {before} %）；此后的 {count} 个结果受到影响。',
    remedy: '何时发生尚不清楚：逐一复查这些结果，并通知使用者。',
  },
  'force-outside-certificate': {
    message: '结果 {identity} 的力为 {force} N，超出已核查的力值范围（{low}～{high} N）。',
    remedy: '对其单独判断；该处的漂移未知。',
  },
  'displacement-class-not-reached': {
    message: '{steps} 个校准点中有 {count} 个未达到 1 级，首个在 {travel} mm 处，受限于{term}。',
    remedy: '按该通道的实际能力使用：在每个应变旁注明其级别，并由更精细的传感器求 Rp。',
  },
  'displacement-reversal': {
    message: '进程与回程的读数最多相差 {difference} mm，位于 {travel} mm 处：传感器存在间隙或摩擦。',
    remedy: '每个位置都应从同一方向接近；应变环中不要包含换向部分。',
  },
  'gauges-disagree': {
    message: '四个应变片偏离同一平面，偏差为平均应变的 {share} %。',
    remedy: '在采信弯曲结果之前，检查每个应变片的接线、灵敏系数和位置。',
  },
  'bending-large': {
    message: '弯曲为平均应变的 {bending} %：平均应力达到对中拉伸所需值的 {share} % 时，表面即已屈服。',
    remedy: '使夹头与试样对中，使用球面座，并以小的预载校直；ReH 和比例极限偏低。',
  },
  'compliance-runs-differ': {
    message: '各次测量不一致：在最大力处，其柔度的分散为平均值的 {share} %，超出各自分散性所能解释的程度。',
    remedy: '各次测量之间夹头、方向或摩擦有了变化；重新测量，并对递增力和递减力分别给出柔度。',
  },
  'compliance-curved': {
    message: '用一个数不能描述该试验机：其位移随力的 {exponent} 次幂变化，在最大力的五分之一处比按正比计算大 {share} %。',
    remedy: '采用表格或幂律，或在实际使用的力值之间测量。',
  },
  'compliance-poorly-determined': {
    message: '柔度的标准不确定度为其值的 {uncertainty} %。',
    remedy: '使用刚度更大的试块或更大的长度差，增加采样点，并使测量范围达到试验所用的力。',
  },
  'force-beyond-compliance': {
    message: '有 {count} 个采样点高于 {limit} N，该范围内未测量试验机柔度；柔度按其末端的值外推到 {force} N。',
    remedy: '将柔度测量到试验所用的力。',
  },
  'window-below-compliance': {
    message: '弹性窗口从 {force} N 开始，低于 {limit} N，该范围内未测量试验机柔度。',
    remedy: '试验机在小力下刚度较低：从该处起测量柔度，或将窗口设在其上方。',
  },
  'modulus-carries-compliance': {
    message: '仅试验机柔度一项就使 E 的标准不确定度达到 {uncertainty} %。',
    remedy: '使用引伸计、更长或更细的试样，或更好地测量柔度。',
  },
  // compression and bending
  'signs-turned': {
    message: '以下各列将加载记为负值：{columns}；其符号已反转，使加载为正。',
    remedy: '无需处理；原始各列未作改动。',
  },
  'piece-squat': {
    message: '高径比为 {ratio}，小于 {least}：每个应力值都含有端面摩擦的影响。',
    remedy: '轴承材料使用 0.8～2 倍直径的试样，一般用途使用 3 倍直径的试样（ASTM E9）。',
  },
  'piece-slender': {
    message: '高径比为 {ratio}，大于 {most}：超出压缩试样的制作范围。',
    remedy: '8～10 倍直径的试样只用于测定模量，测定强度使用 3 倍直径的试样（ASTM E9）。',
  },
  'buckling-near': {
    message: '高径比为 {ratio} 时，力与切线模量屈曲载荷之比在应变 {strain} 处达到 {share}。',
    remedy: '使用更短的试样，或只采用该试样在屈曲载荷一半以下的数据。',
  },
  buckled: {
    message: '在应变 {strain}（{stress} MPa）处，力超过了端部系数为 {endFactor} 的直试样的切线模量屈曲载荷：此后试样发生弯曲。',
    remedy: '该应变之后的值不得使用；屈曲的试样可能向侧面飞出。使用更短的试样。',
  },
  barrelled: {
    message: '试样中部的宽度为两端的 {ratio} 倍：大应变下的应力含有摩擦的影响。',
    remedy: '改善润滑，或分级加载并重新润滑；给出小应变下的应力。',
  },
  'ends-wider-than-middle': {
    message: '端部比中部更宽，中部宽度为端部的 {ratio} 倍：在压板之间受压的试样应鼓出。',
    remedy: '查看两个直径是否互换；润滑剂积存使端部变宽的情况很少见。',
  },
  'volume-not-kept': {
    message: '按试验后的直径，试样体积为其原始体积的 {ratio} 倍。',
    remedy: '检查直径、高度及其单位：塑性压缩保持体积不变。',
  },
  'barrelling-not-measured': {
    message: '应变达到 {strain}，但未给出试验后的直径：鼓形程度未知。',
    remedy: '试验后测量中部和两端的直径。',
  },
  'height-unlike-record': {
    message: '按记录，试样的永久高度减小量为 {recorded} mm；按测量为 {measured} mm。',
    remedy: '检查试验机柔度、试样高度和位移零点。',
  },
  'end-friction-not-removed': {
    message: '未给出摩擦系数：流变曲线含有端面摩擦的影响。',
    remedy: '给出润滑剂的摩擦系数，或用两种高度的试样试验并外推。',
  },
  'end-friction-removed': {
    message: '已按 Siebel 方法以摩擦系数 {friction} 修正流变应力：最大应变处修正 {share} %。',
    remedy: '说明摩擦系数及其来源；其不确定度会传递给流变应力。',
  },
  'compressive-strength-without-strain': {
    message: '试样未破裂：塑性金属没有抗压强度，只有规定应变下的应力。',
    remedy: '报告屈服强度，以及各应力和对应的应变。',
  },
  'span-short': {
    message: '跨高比为 {ratio}，小于 {least}：剪切使挠度增加 {share} %，模量相应偏低。',
    remedy: '使用更大的跨距（高度的 16 倍），或给出模量时注明剪切所占的份额。',
  },
  'large-deflection': {
    message: '从应力 {stress} MPa 起，挠度超过跨距的 {share} %：小挠度公式不再适用，支座处的摩擦也增大。',
    remedy: '不要采用此后的应力和应变，或使用更小的跨距。',
  },
  'flexural-stress-nominal': {
    message: '屈服以后弯曲应力为名义值：对该截面，它最多会将最外层纤维的应力高估到 {factor} 倍。',
    remedy: '只与同一截面的其他弯曲试验比较；不要与拉伸试验比较。',
  },
  'indentation-not-removed': {
    message: '未给出支座和压头处的压入量，它仍包含在挠度中。',
    remedy: '将试样放在平板上测量压入量；如果试验机柔度已包含该量，则给出 0。',
  },
  'chord-unlike-slope': {
    message: '弦线给出 {chord} MPa，最直的一段给出 {slope} MPa。',
    remedy: '查看曲线：弦线的两个应变之间存在间隙或屈服；对金属应采用斜率。',
  },
  // shear, Brinell hardness, cupping, unloading, the broken piece
  'shear-clearance': {
    message: '间隙 {clearance} mm 为被剪切尺寸 {dimension} mm 的 {share} %：剪切中混入了弯曲和拉伸。',
    remedy: '使用配合紧密、刃口锋利的工具；给出该值时注明间隙。',
  },
  'shear-bending': {
    message: '试样已弯曲：其抗剪强度不是纯剪切的抗剪强度。',
    remedy: '将试样支承到剪切面处，使用间隙更小的工具，重新试验。',
  },
  'shear-ratio-unusual': {
    message: '抗剪强度为抗拉强度的 {ratio} 倍；{family}通常为 {least}～{most}。',
    remedy: '检查面积、剪切面数和给出的抗拉强度。',
  },
  'no-shear-modulus': {
    message: '不由此推算剪切模量：位移中除剪切外还含有弯曲、压入和工具的变形。',
    remedy: '剪切模量应由扭转试验测定。',
  },
  'brinell-indentation-outside': {
    message: '压痕 {number}：其直径为球直径的 {ratio} 倍，超出 0.24～0.60；该压痕无效。',
    remedy: '对该球改用其他试验力：软金属用较小的比率，硬金属用较大的比率。',
  },
  'brinell-diameters-differ': {
    message: '压痕 {number}：两个直径相差 {share} %。',
    remedy: '检查表面是否倾斜或有晶粒取向；超过 1 % 时应在硬度值旁注明（行业惯例）。',
  },
  'brinell-one-diameter': {
    message: '压痕 {number}：只读取了一个直径。',
    remedy: '应在相互垂直的两个方向读取；直径的百分之一相当于硬度的百分之二。',
  },
  'brinell-force-not-nominal': {
    message: '压痕 {number}：试验力 {force} N 与 {designation} 的试验力 {nominal} N 相差 {share} %；允许 1 %。',
    remedy: '使试验力与标称值之差在 1 % 以内；硬度已按实际的力计算。',
  },
  'brinell-force-in-kgf': { message: '压痕 {number}：力 {force} N 正是 {designation} 以 kgf 表示的数值，即 {nominal} N。', remedy: '请以牛顿给出力：硬度按所给数值计算。' },
  'brinell-indentation-off-scale': { message: '压痕 {number} 不计入平均值：其力偏离 {designation} 的力 {share} %，而其他压痕在 1 % 以内。', remedy: '用该标尺的力重新压痕。' },
  'brinell-index-unusual': {
    message: '压痕 {number}：直径 {ball} mm 的球与 {force} N 的试验力（试验力-球直径平方的比率 {index}）不是标准规定的组合。',
    remedy: '采用直径 1、2.5、5 或 10 mm 的球及标准为其规定的试验力；其他组合的硬度值不可比较。',
  },
  'brinell-too-hard': {
    message: '{hardness} HBW 高于标尺的上限 650 HBW：球本身会变形。',
    remedy: '改用其他硬度试验，例如维氏或洛氏 C 标尺。',
  },
  'brinell-ball-unsuited': {
    message: '直径 {ball} mm 的球对于{material}过小；最小为 {least} mm。',
    remedy: '改用较大的球重新试验：压痕应覆盖许多晶粒。',
  },
  'brinell-index-unsuited': {
    message: '试验力-球直径平方的比率 {index} 不适用于硬度为 {hardness} HBW 的{material}（通常为 {usual}）。',
    remedy: '改用通常比率的试验力重新试验。',
  },
  'brinell-force-unsteady': {
    message: '压痕 {number}：保持期间试验力变化 {share} %；以最大值 {force} N 为准。',
    remedy: '使试验力保持在 1 % 以内：缓慢补力，切勿超过。',
  },
  'brinell-dwell-outside': {
    message: '压痕 {number}：试验力保持了 {duration} s，不在 10～15 s 之内。',
    remedy: '保持 10～15 s，或注明保持时间：软金属会蠕变。',
  },
  'brinell-rise-outside': {
    message: '压痕 {number}：试验力在 {duration} s 内升到规定值，不在 2～8 s 之内。',
    remedy: '在 2～8 s 内无冲击地施加试验力。',
  },
  'brinell-dwell-not-found': {
    message: '压痕 {number}：记录中分辨不出试验力的保持段。',
    remedy: '应从施力之前一直记录到卸力之后。',
  },
  'brinell-piece-thin': {
    message: '试样厚度为 {thickness} mm，小于压痕深度的 8 倍（{least} mm）。',
    remedy: '采用较小的球和试验力；试样背面不得出现可见痕迹。',
  },
  'brinell-near-edge': {
    message: '压痕 {number} 距边缘 {distance} mm，小于其直径的 2.5 倍（{least} mm）。',
    remedy: '应在离边缘更远处试验。',
  },
  'brinell-near-neighbour': {
    message: '压痕 {number} 距相邻压痕 {distance} mm，小于其直径的 3 倍（{least} mm）。',
    remedy: '应在离其他压痕更远处试验：其附近的金属已加工硬化。',
  },
  'strength-estimated': {
    message: '抗拉强度 {strength} MPa 由硬度估算得到，准确到约 10 %。',
    remedy: '切勿以此验收零件：强度起决定作用时应做拉伸试验。',
  },
  'strength-not-estimated': {
    message: '不估算抗拉强度：{why}。',
    remedy: '应做拉伸试验。',
  },
  'cupping-crack-not-recorded': {
    message: '试样 {number}：力在最大值之后的下降未达到 {share} %；记录中没有裂纹，不给出深度。',
    remedy: '加载到裂纹穿透板材，并在此后继续记录。',
  },
  'cupping-fall-gradual': {
    message: '试样 {number}：力在 {depth} mm 范围内逐渐下降；裂纹出现的时刻有同样大小的不确定度。',
    remedy: '用镜子或摄像头透过关闭的防护罩观察杯突部位，切勿在加载轴线上观察，透光时停止；在最大力附近放慢加载。',
  },
  'cupping-contact-uncertain': {
    message: '试片 {number}：力上升缓慢；球在行程 {earliest}～{latest} mm 之间的某处接触。深度从中点算起，不确定 {doubt} mm。',
    remedy: '用眼睛或在已知的小力下读取首次接触时的行程，或用深度规测量杯深。',
  },
  'readings-differ': {
    message: '{symbol} 的值在 {lowest}～{highest} {unit} 之间：为其平均值的 {share} %，而对同一材料 {limit} % 已属较大（惯例）。',
    remedy: '检查偏离最远的一个：其读数、在试样上的位置、记录。没有原因不得舍去任何一个。',
  },
  'cupping-displacement-coarse': {
    message: '试样 {number}：位移读数的一个步长为 {step} mm；宜为 0.1 mm。',
    remedy: '使用更精细的位移传感器。',
  },
  'cupping-frame-included': {
    message: '深度中含有试验机的变形，而该变形未给出。',
    remedy: '测量试验机柔度，或用量具测量杯突深度。',
  },
  'cupping-sheet-outside': {
    message: '板厚 {thickness} mm 超出定义杯突值 IE 的 0.1～2 mm 范围。',
    remedy: '较厚或较窄的板材有各自的工具和符号；不要与 IE 比较。',
  },
  'cupping-blank-narrow': {
    message: '试样宽度为 {width} mm；宜为 90 mm 或以上。',
    remedy: '裁取更宽的试样，使四周都被压紧。',
  },
  'cupping-holding-force': {
    message: '试样的夹紧力为 {force} N，而不是约 10 kN。',
    remedy: '将夹紧力调到约 10 kN：试样夹得松会被拉入模内，使深度偏大。',
  },
  'cupping-tools-other': {
    message: '{ball} mm 的球和 {die} mm 的压模不是杯突值 IE 所用的 20 mm 和 27 mm。',
    remedy: '给出深度时注明所用工具；该值不可与 IE 比较。',
  },
  'cupping-few-blanks': {
    message: '深度仅依据 {blanks} 个试样；宜为三个或以上。',
    remedy: '至少试验三个试样并给出平均值。',
  },
  'unloading-refused': {
    message: '进回程相对误差 {reversibility} % 大于 1.5 %：力值只在递增时有效，因此不采用卸载数据。',
    remedy: '对递减力进行检验，或在试样处而不是在油中测力。',
  },
  'reversibility-unknown': {
    message: '力的进回程相对误差未知：油缸摩擦会使环线弯曲并变宽。',
    remedy: '对递增力和递减力进行检验，并给出其进回程相对误差。',
  },
  'unloading-none': {
    message: '记录中没有卸载：{why}。',
    remedy: '使驱动装置退回，直到力充分下降，然后重新加载；应完整记录。',
  },
  'unloading-not-to-zero': {
    message: '第 {number} 个环只下降到其顶点的 {share} %；其残余应变取其直线与零应力的交点。',
    remedy: '残余应变起决定作用时，应卸载到接近零。',
  },
  'permanent-set-not-bracketed': {
    message: '未测定 {symbol}：各环的残余应变为 {least}～{most} %。',
    remedy: '分别从较低和较高的应力卸载，使一个残余应变低于规定值，另一个高于规定值。',
  },
  'fracture-outside-middle': {
    message: '断裂处距最近的标记 {distance} mm，小于原始标距的三分之一（{least} mm）。',
    remedy: 'A 若达到规定的最小值则仍有效；否则用移位法测定，或另取试样试验。',
  },
  'fracture-at-mark': {
    message: '试样断在标记处。',
    remedy: '标记应打得更轻；A 值得怀疑，强度也可能偏低。',
  },
  'fracture-outside-parallel': {
    message: '试样断在{place}：A 和 Z 不是平行长度部分的值，强度为下限值。',
    remedy: '检查过渡弧、夹头和对中，并另取试样试验。',
  },
  'elongation-small': {
    message: 'A = {elongation} % 小于 5 %：普通的两个标记对此过于粗糙。',
    remedy: '用精细标记测量：刻划圆弧，在显微镜下读数。',
  },
  // planning
  'force-near-capacity': {
    message: '预计的最大力 {force} N 为额定最大力 {capacity} N 的 {share} %。',
    remedy: '采用更小的截面或试验力；材料类别并不能限定一根未知棒材的强度。',
  },
  'force-above-capacity': {
    message: '预计的最大力 {force} N 为额定最大力 {capacity} N 的 {share} %：不得在该试验机上进行此试验。',
    remedy: '采用更小的截面或试验力，或改用其他试验机；切勿调高溢流阀的压力。',
  },
  'force-unverified': {
    message: '未给出试验机经检验的力值范围。',
    remedy: '对力进行检验，并给出经检验的最小力及该处的误差。',
  },
  'force-below-verified': {
    message: '所需的最小力 {force} N（{what}）低于 {limit} N（{why}）。',
    remedy: '采用更大的截面或试验力，或对力值范围的低端进行检验。',
  },
  'pressure-near-limit': {
    message: '油压将达到 {pressure} MPa，为{device}限值 {limit} MPa 的 {share} %。',
    remedy: '采用更小的截面或试验力；切勿调高溢流阀的压力，并使变送器保持在其量程之内。',
  },
  'travel-near-stroke': {
    message: '试验约需 {travel} mm 的位移，为行程 {stroke} mm 的 {share} %。',
    remedy: '试验开始前消除间隙，或在规则允许的范围内缩短试样。',
  },
  'frame-compliance-unknown': {
    message: '试验机柔度未知：速度、位移和储存的能量均为最小值，且不能由位移求得 E。',
    remedy: '用刚性块、已知的棒或两种长度测量柔度，或使用引伸计。',
  },
  'oil-volume-unknown': {
    message: '受压油的体积未知：弹性段的泵压次数和储存的能量均为最小值。',
    remedy: '估算油缸、管路和软管的容积；油的压缩所需的泵压次数往往多于活塞的移动。',
  },
  'elastic-speed-too-fast-for-yield': {
    message: '若在屈服期间保持弹性段的速度，试样的应变速率将为 {rate} 1/s，是该处目标速率的 {ratio} 倍。',
    remedy: '在屈服之前、加载节奏表所示之处降低速度。',
  },
  'elastic-part-quick': {
    message: '按此速率，变速之前的弹性段只持续 {time} s：表盘读数还不到五次。',
    remedy: '用记录仪记录，或采用标准允许速率的下限。',
  },
  'ball-force-error': {
    message: '力的误差可能为 {error} %，而球压头的试验力最多允许 {limit} %。',
    remedy: '将试验机在该力处检验到 1 级，或选择已达到该等级的力。',
  },
  'drive-too-fast': {
    message: '驱动装置在{stage}阶段每分钟需要 {number} {what}：手动操作若每分钟超过 {limit}，便难以保持均匀。',
    remedy: '采用标准允许的较低速率，并予以注明。',
  },
  'drive-strokes-coarse': {
    message: '每泵压一次横梁移动 {travel} mm，为 Rp0.2 规定延伸的 {ratio} 倍：屈服会在一次泵压之内越过。',
    remedy: '越过弹性段后应缓慢地、只用部分行程扳动手柄，或使用步长更细的驱动装置。',
  },
  'planned-sampling-slow': {
    message: '每秒采样 {rate} 次，低于应力速率 {stressRate} MPa/s 所需的 {least} 次：ReH 最多可能偏低 {loss} MPa。',
    remedy: '提高采样频率，或在屈服附近放慢加载。',
  },
  'strain-not-in-accordance': {
    message: '{standard} 要求使用引伸计：规定塑性延伸强度和 E 将由横梁位移测定，不符合该标准。',
    remedy: '使用引伸计，或在每个值旁注明这一偏离。',
  },
  'structural-acceptance': {
    message: '这些值要用于验收承载零件：本方案不能满足这一要求。',
    remedy: '遵守适用的规范；应由具备能力、试验机经过检验的实验室，以及持证或以其他方式获得授权的专业人员作出决定。',
  },
  'planned-index-unusual': {
    message: '试验力-球直径平方的比率 0.102 F/D² = {index} 不是 {usual} 中的任何一个。',
    remedy: '对该球采用表中的试验力。',
  },
  'planned-indentation-outside': {
    message: '硬度为 {hardness} HBW 时，压痕将为球直径的 {ratio} 倍，超出 0.24～0.60。',
    remedy: '改用其他的试验力-球直径平方的比率。',
  },
  'planned-span-short': {
    message: '跨距为梁高的 {ratio} 倍：低于 {limit} 时剪切会增大挠度。',
    remedy: '采用更大的跨距，或不测定 E。',
  },
  'planned-buckling': {
    message: '高径比为 {ratio} 时，试样自应变 {strain} 起可能屈曲，早于计划的 {planned}。',
    remedy: '采用更短的试样（至多 3 倍直径），或提前停止。',
  },
  'head-weak': {
    message: '{what}：最大力时为 {stress} MPa，而夹持端允许 {limit} MPa；为所需的 {margin} 倍。',
    remedy: '加大夹持端，或减小截面；试样必须在平行长度内断裂。',
  },
  'head-too-small': {
    message: '夹持端为截面的 {ratio} 倍，小于 {least}。',
    remedy: '加宽夹持端；断在夹持端的试样即告报废。',
  },
  'grip-short': {
    message: '夹头夹住夹持端 {length} mm，小于 {least} mm。',
    remedy: '加长夹持端：楔形夹头应夹住夹块面长的三分之二，螺纹旋入长度应不小于其直径。',
  },
  'grip-may-slip': {
    message: '夹头的夹持能力为所需的 {margin} 倍，小于 {least}。',
    remedy: '清洁夹块面并修锐齿纹，在楔块背面涂润滑脂，提高夹紧力或加长夹持端。',
  },
  'fillet-small': {
    message: '过渡弧半径 {radius} mm 小于 {least} mm。',
    remedy: '加大半径：尖锐的台肩会引发断裂。',
  },
  'parallel-length-long': {
    message: '平行长度 {length} mm 为原始标距 {gauge} mm 的 {ratio} 倍：试样可能断在标记之外。',
    remedy: '缩短平行长度，或在整个平行长度上作等间距标记。',
  },
  'piece-too-short': {
    message: '总长 {length} mm 容纳不下平行长度、过渡弧和夹持端，它们需要 {least} mm。',
    remedy: '加长坯料，或在夹头所需的范围内缩短夹持端。',
  },
  'shape-outside-tolerance': {
    message: '{dimension}沿试样相差 {difference} mm，大于 {limit} mm。',
    remedy: '重新加工试样，或在更多位置测量并注明偏差。',
  },
  'size-outside-tolerance': {
    message: '{dimension}与标称值相差 {difference} mm，大于 {limit} mm：面积必须实测，不能取标称值。',
    remedy: '测量试样并使用其实际面积。',
  },
  // uncertainty
  'budget-not-linear': {
    message: '在“{input}”的不确定度范围内模型呈非线性：不确定度预算遗漏的部分为方差的 {share} %。',
    remedy: '用蒙特卡洛法核对，并给出其区间；分布很可能是偏斜的。',
  },
  'one-term-dominates': {
    message: '“{input}”占 {symbol} 方差的 {share} %。',
    remedy: '首先改进这一项；用蒙特卡洛法核对，因为它的分布形状就是结果的分布形状。',
  },
  'few-degrees-of-freedom': {
    message: '{symbol} 的不确定度仅有 {freedom} 个有效自由度：包含因子为 {factor}。',
    remedy: '对占主导的一项增加读数，或使用合并标准差。',
  },
  'uncertainty-incomplete': {
    message: '不确定度未包含未给出的各项：{missing}。',
    remedy: '给出它们的不确定度；未包含的项按无误差处理。',
  },
  'uncertainty-large': {
    message: '“{input}”的标准不确定度为其值的 {share} %。',
    remedy: '查看是否本意为百分数或其他单位：相对不确定度为小数（0.005 即 0.5 %），长度以 mm 计。',
  },
  'zero-uncertainty-large': {
    message: '力的零点的标准不确定度为最大力的 {share} %。',
    remedy: '查看是否本意为其他单位：其单位为 N，不是力的份额。',
  },
  'uncertainty-not-determined': {
    message: '未给出 {symbols} 的不确定度：无论“{input}”改变其不确定度的多小一部分，试验都得不到值。',
    remedy: '给出该量较小的不确定度，或运行蒙特卡洛法并给出其区间和没有得到该值的模拟次数。',
  },
  'noise-decides': {
    message: '未给出 {symbols} 的不确定度：换成同样大小的另一组噪声，试验的多数重复没有这样的值。',
    remedy: '该值可能由噪声造成：仅在曲线确实显示它时才报告。以更小的噪声记录。',
  },
  'budgets-not-linear': {
    message: '在“{input}”的不确定度范围内试验结果呈曲线变化：不确定度预算最多遗漏方差的 {share} %（{symbols}）。',
    remedy: '用蒙特卡洛法核对这些量，并给出其区间；分布很可能是偏斜的。',
  },
  'budgets-of-few-degrees-of-freedom': {
    message: '不确定度的有效自由度很少，最少为 {freedom}：{symbols}。',
    remedy: '对占主导的一项增加读数，或使用合并标准差。',
  },
  'noise-correlated': {
    message: '相邻采样点的噪声相关（相关系数 {correlation}）：弹性窗口随之变动，窗口的选择成为不确定度预算中的一项。',
    remedy: '查找缓慢干扰的来源；自行选定窗口，并取得宽一些。',
  },
  'budget-not-validated': {
    message: '不确定度预算与蒙特卡洛法在 {symbol} 区间两端的差为 {low} 和 {high} {unit}，允许值为 {tolerance} {unit}。',
    remedy: '给出蒙特卡洛法的区间；模型的线性程度或分布的正态程度不足以使用不确定度预算。',
  },
  'budgets-not-validated': {
    message: '不确定度预算与蒙特卡洛法在区间两端的差超过允许值：{symbols}。',
    remedy: '对这些量给出蒙特卡洛法的区间；模型的线性程度或分布的正态程度不足以使用不确定度预算。',
  },
  'budget-trials-few': {
    message: '模拟次数太少，无法判断不确定度预算的区间是否成立：{symbols}。',
    remedy: '在需要之处增加模拟次数；次数为四倍时，区间端点的误差减半。',
  },
  'monte-carlo-not-converged': {
    message: '蒙特卡洛法在 {trials} 次模拟后结束，其结果尚未稳定到 {tolerance} 以内。',
    remedy: '允许更多次模拟，或要求较少的位数。',
  },
  'monte-carlo-no-variance': {
    message: '{input} 的自由度为 {freedom}。自由度不大于 2 时（例如三次读数），其模拟没有方差：不能给出 {symbol} 的标准不确定度，但能给出区间。',
    remedy: '给出该区间以及不确定度概算的标准不确定度；四次读数或合并标准偏差可使模拟具有方差。',
  },
  'monte-carlo-trials-few': {
    message: '{trials} 次模拟对于 {coverage} % 的区间而言太少：自 {least} 次起其端点才可知。',
    remedy: '增加模拟次数，或不指定次数：结果稳定后计算即结束。',
  },
  'monte-carlo-trials-failed': {
    message: '{trials} 次模拟中有 {failed} 次没有得到 {symbol}。',
    remedy: '该分布只是得到该值的那些模拟的分布；应考察在其不确定度范围内该值究竟是否存在。',
  },
  // several tests, decisions, values that check each other
  'few-replicates': {
    message: '仅有两个结果、只给出极差的量：{symbols}。',
    remedy: '至少试验三个试样；两个值的标准差说明不了问题。',
  },
  'esd-few-values': {
    message: '{n} 个值：这种多个离群值检验的界限在 25 个值以上时良好，15 个值以上时尚可。',
    remedy: '用格拉布斯检验查找一个离群值，或试验更多试样。',
  },
  'variation-above-usual': {
    message: '{symbol} 的变异为 {variation} %，超过实验室内通常值 {usual} % 的三倍。',
    remedy: '在归咎于金属之前，先从加工、夹持、测量或力中查找原因。',
  },
  'replicate-outlying': {
    message: '试验 {test} 的 {symbol}（{value} {unit}）偏离程度超出偶然性所能解释的范围：G = {statistic}，大于 {limit}。',
    remedy: '查找物理原因并记录下来；没有原因则保留该值。',
  },
  'replicate-odd': {
    message: '试验 {test} 在多个量上的偏离程度超出偶然性所能解释的范围：{symbols}；偏离最大的是 {symbol}，{value} {unit}（G = {statistic}，大于 {limit}）。',
    remedy: '多个量同时偏离，说明问题出在它们的共同点：该试样的横截面积、力或某一长度。请记录原因；没有原因则保留这些值。',
  },
  'replicates-repeated': {
    message: '同一记录作为多次试验给出：{tests}。它被计入 {count} 次，因此 n 过大而离散过小。',
    remedy: '去掉副本；对同一记录的多次评定不是重复试验。',
  },
  'replicates-read-alike': {
    message: '试验 {tests} 的读数相同，共 {count} 次：可能是位数少的读数偶然相同，也可能是同一试验被多次给出。',
    remedy: '去掉副本；不同试样的读数保留。',
  },
  'replicates-mixed': {
    message: '各试验的{what}不同（{values}），但仍被合并。',
    remedy: '其分散性也包含这一差异；起决定作用时，只合并同类试验。',
  },
  'replicates-not-pooled': {
    message: '{symbols} 未合并：各试验的{what}不同（{values}）。',
    remedy: '只合并同类试验（伸长率先按 ISO 2566 换算），或在选项中要求合并。',
  },
  'replicates-at-least': {
    message: '{symbols}：{total} 次试验中有 {count} 次（{tests}）未计入，这些试验在最大力之前结束，其值只是至少这么大。',
    remedy: '应另取试样试验到断裂；不含这些试验的平均值不是全部试验的平均值，也不能说明全部试验的分散性。',
  },
  'group-off-the-mean': {
    message: '组 {group} 的平均值偏离：h = {h}，超出 {limit}。',
    remedy: '将其试验机、长度、单位和读数与其他组比较；保留其结果。',
  },
  'group-scatters': {
    message: '组 {group} 的分散性大于其他组：k = {k}，大于 {limit}。',
    remedy: '检查其夹持、读数和加工；保留其结果。',
  },
  'group-variance-outlying': {
    message: '组 {group} 占总平方和的比例为 {share}（限值 {limit}）：按科克伦检验为{verdict}。',
    remedy: '查找原因；只有在找到原因并记录下来时才可剔除。',
  },
  'group-mean-outlying': {
    message: '组 {group} 的平均值偏离最远：G = {statistic}（限值 {limit}），按格拉布斯检验为{verdict}。',
    remedy: '查找原因；只有在找到原因并记录下来时才可剔除。',
  },
  'limit-within-uncertainty': {
    message: '{symbol} 距其极限值 {distance} {unit}，在其扩展不确定度 {uncertainty} {unit} 以内：仅就不确定度而言，该值可能在极限值的任一侧。',
    remedy: '给出判定结论时注明判定规则；起决定作用时，试验更多试样或改善测量。',
  },
  'limit-of-other-size': {
    message: '{symbol} 为 {value} {unit}，其极限值为 {limit} {unit}：两者相差 {ratio} 倍，似乎单位不同。',
    remedy: '以该值的单位给出极限值：N、mm、MPa，比例量用比值（0.22 或 22%，而不是 22）。',
  },
  'acceptance-zone-empty': {
    message: '两侧各 {guard} {unit} 的保护带在 {lower} 与 {upper} {unit} 之间没有留下余地：{symbol} 的任何值都无法通过。',
    remedy: '改善测量或试验更多试样，直到保护带能容纳在两极限值之间，或在试验之前商定其他规则。',
  },
  'guard-of-two-limits': {
    message: '{symbol} 通过，风险为 {risk} %：保护带在每个极限值处各保持 {one} %，而两个极限值都很近。',
    remedy: '若约定的是总风险而不是每个极限值处的风险，应采用更宽的保护带（guardFactor），或改善测量。',
  },
  'rounding-decides': {
    message: '由修约决定：{symbol} 以 {compared} {unit} 进行比较；未修约的测得值 {value} {unit} 会得出相反的结论。',
    remedy: '随判定结论说明这一点：修约属于约定规则的一部分，风险则按测得值计算。',
  },
  'decision-without-uncertainty': {
    message: '对 {symbol} 的判定未考虑其不确定度：误判的风险未知。',
    remedy: '评定不确定度；没有不确定度时只能采用简单接受规则。',
  },
  'decision-on-travel': {
    message: '{symbol} 依据横梁位移得到：判定以经引伸计证实为条件。',
    remedy: '该值用于验收之前，应使用引伸计重新试验。',
  },
  'decision-without-hardening': {
    message: '{symbol} 取自屈服平台的最高应力：其后没有硬化，ISO 6892-1 在此不定义 Rm。',
    remedy: '在该值用于验收之前，应商定此类材料以何值作为强度。',
  },
  'decision-for-structure': {
    message: '{symbol} 拟用于结构：判定以经有资质的实验室和负责工程师确认为条件。',
    remedy: '遵守当地规范和持证执业的要求；课堂试验不是证书。',
  },
  'gauge-length-unstated': {
    message: '{symbol} 的原始标距未知，因此极限值可能是对另一标距规定的。',
    remedy: '给出该值时注明原始标距和面积。',
  },
  'values-disagree': {
    message: '{link}：{left} = {leftValue} {leftUnit} 与 {right} = {rightValue} {rightUnit} 不一致（允差 {tolerance} {leftUnit}）。',
    remedy: '见该关系的可能原因；两个读数之一，或该规则本身，在此不成立。',
  },
  'link-one-sided': {
    message: '{link}：{symbol} 只是至少这么大，因为试验在最大力之前结束；该关系能表明其偏大，不能表明其偏小。',
    remedy: '应试验到超过最大力；之后才能比较两侧。',
  },
  'compared-record-differs': { message: '两个结果来自不同的记录（{first} 和 {second}）。', remedy: '比较两次试验时无需处理；若本应是同一记录，请查找被改动的文件。' },
  'compared-piece-differs': { message: '两个试样的不同之处：{names}。', remedy: '先比较试样的测量值；凡含有它们的值都会随之改变。' },
  'compared-options-differ': { message: '两个结果的选项不同之处：{names}。', remedy: '若要比较试验，请用相同的选项评定两者。' },
  'compared-version-differs': { message: '两个结果由版本 {first} 和 {second} 得出。', remedy: '更新日志说明各版本之间哪些数值发生了变化。' },
  'compared-value-moved': { message: '记录、试样和选项都相同，{symbol} 却从 {first} {unit} 变化了 {difference} {unit}（版本 {firstVersion} 和 {secondVersion}）。', remedy: '更新日志应写明这一变化；同一版本中相同的输入给出相同的数值，因此两者之一被改动过。' },
  'compared-beyond-uncertainty': { message: '{symbol} 相差 {times} 个标准不确定度，超过 {limit}：{first} 和 {second} {unit}。', remedy: '请在试样、机架或选项中寻找原因，或寻找不确定度遗漏的来源。' },
  'compared-one-lacks': { message: '两个结果中只有结果 {number} 含有 {symbol}。', remedy: '另一结果的检查发现说明其缺失的原因，或者未要求该值。' },
  'compared-at-least': {
    message: '未给出以下各量的差值：{symbols}。试验在最大力之前结束时（结果 {numbers}），其值只是至少这么大。',
    remedy: '应比较已超过最大力的试验；界限只说明一侧。',
  },
  'calibration-date-missing': { message: '未给出力的最近一次检验的日期，因此检验距今多久未知。', remedy: '按“年-月-日”的格式给出证书的日期。' },
  'calibration-age-unknown': { message: '力的检验日期为 {date}；试验日期未按“年-月-日”的格式给出，因此检验距试验多久未知。', remedy: '按“年-月-日”的格式给出试验日期。' },
  'calibration-expired': { message: '力的检验日期为 {date}，在试验之前 {months} 个月；检验周期为 {interval} 个月。', remedy: '在下一次试验之前对力进行检验，并按调整前的误差对本次试验作出判断。' },
  'calibration-after-test': { message: '力的检验日期为 {date}，晚于试验日期 {test}：以后的检验反映的是力现在的示值。', remedy: '给出试验当日有效的检验；用以后那次检验中调整前的误差判断可能发生的漂移。' },
  'force-outside-verified': { message: '{symbol} 处的力为 {force} N；力的检验范围为 {low}～{high} N。', remedy: '在实际使用的力值处进行检验，或采用更大或更小的试样；对该值不得声称任何级别。' },
  'force-outside-calibration': {
    message: '{symbol} 处的力为 {force} N；该通道仅在 {low}～{high} N 范围内校准。',
    remedy: '在实际使用的力值处校准：从弹性窗口以下直至最大力。',
  },
  'calibration-hardly-used': { message: '最大力 {force} N 仅为该通道校准上限（{high} N）的 {share} %：本次试验只用到校准的一小部分，或者两者的单位不同（把 bar 当作 MPa 相差十倍，把 kN 当作 N 相差一千倍）。', remedy: '比较记录与校准的单位。若两者一致，应校准到实际使用的力：校准的不确定度是其最大力的一部分。' },
  'force-class-coarse': { message: '力经检验为 {forceClass} 级；常用试验标准要求 1 级或更好。', remedy: '不得声称符合这些标准；查明限制级别的原因。' },
  'force-class-not-in-uncertainty': { message: '力经检验为 {forceClass} 级：每个力和应力的误差都可能达到 {share} %，而给出的不确定度均未包含该误差。', remedy: '在试验的各项不确定度中给出力的级别或不确定度，或将其加入结果的不确定度预算。' },
  'force-class-unlike': { message: '不确定度中力按 {counted} 级计；力经检验为 {forceClass} 级。', remedy: '按证书上的级别计。' },
  'calibration-outlier': { message: '校准的第 {pair} 对读数（{force} N 处）偏离其余各对的校准 {off} N（其余为 {without} 次；含该对为 {degree} 次）：它是离群值，未被剔除。', remedy: '查找笔误或读数错误，并重新测量该对；只有原因已知时才可剔除。' },
  'calibration-degree-by-one': { message: '校准的 {degree} 次多项式只取决于第 {pair} 对读数（{force} N 处）：没有它，{without} 次就够了。', remedy: '重新测量该对以及其附近的读数；仅凭一对读数无法区分通道弯曲与失误。' },
  'calibration-hysteresis': { message: '相同示值下，回程的参考力比进程高 {difference} N，为最大力的 {share} %，超出分散性。', remedy: '只在力上升时校准（与试验相同），或将该差值计入不确定度；检查密封的摩擦。' },
  'calibration-points-few': { message: '{readings} 个示值处的 {points} 对读数，在 {degree} 次之外只剩 {freedom} 个自由度：校准的分散性以及其中的离群值几乎无从得知。', remedy: '至少在五个力值处校准，每处三次。' },
  'calibration-scatter': { message: '在 {force} N 处，校准偏离其读数对 {share} %；1 级通道允许偏离 {allowed} %。', remedy: '查找分散的来源（读数、摩擦、参考仪器），并重新测量；不得声称更高的级别。' },
  'force-nominal': { message: '力等于油压乘以公称面积 {area} mm²：密封和导向所阻留的部分（通常为百分之几）被计作试样的力，每个应力都因此偏高。', remedy: '用标准测力仪校准；在此之前，给出效率以及力的不确定度，或给出经检验的力的级别。' },
  'force-efficiency-doubt': { message: '力等于油压乘以公称面积 {area} mm² 和效率 {efficiency}，但未给出其不确定度；密封摩擦随压力、磨损和温度变化。', remedy: '用标准测力仪校准，或给出力的不确定度或经检验的力的级别。' },
  'channel-calibration-old': { message: '力通道于 {date} 校准，比试验早 {months} 个月；通常最多一年。', remedy: '重新校准，或给出试验当日有效的力检验。' },
  'compliance-of-other-grips': { message: '试验机柔度是用夹头“{measured}”测量的；本次试验使用的是“{used}”。', remedy: '用试验所用的夹头测量柔度：夹头在柔度中占很大一部分。' },
  'compliance-of-other-direction': { message: '试验机柔度是在{measuredDirection}方向测量的；本次试验在{usedDirection}方向对试验机加载。', remedy: '在试验的方向上测量柔度：方向不同，试验机承力的部件也不同。' },
  'pause-in-elastic-window': { message: '驱动装置在弹性直线的窗口之内静止 {count} 次，最长一次为 {duration} s，位于应变 {strain} mm/mm 处。', remedy: '将窗口设在停顿的上方或下方，或在弹性段不停顿地加载：该处的松弛会使直线弯曲。' },
  'falls-many': { message: '在加载过程中，驱动装置退回 {count} 次，力随之下降；最大的下降为 {fall} N，位于第 {sample} 个采样点。', remedy: '泵压时不得让活塞退回；检查阀和泵。评定时略去这些回环。' },
};
