/**
 * The characteristic function of U² for U uniform on (0, 1): the integral of exp(i w u²) over 0..1, w > 0.
 * Power series for small w; above, the continued fraction of the complementary error function
 * (Abramowitz & Stegun 1964, 7.1.14, evaluated by the method of Lentz 1976). Returns [real, imaginary].
 */
export function squaredUniformTransform(w: number): readonly [number, number] {
  return w < 4 ? bySeries(w) : byFraction(w);
}

function bySeries(w: number): readonly [number, number] {
  let real = 0;
  let imaginary = 0;
  let power = 1;
  for (let k = 0; k < 60; k += 1) {
    const term = power / (2 * k + 1);
    const sign = k % 4 < 2 ? 1 : -1;
    if (k % 2 === 0) real += sign * term;
    else imaginary += sign * term;
    power *= w / (k + 1);
    if (power < 1e-18) break;
  }
  return [real, imaginary];
}

// The integral over 0..1 is the one over 0..infinity, sqrt(pi / 4w) e^{i pi/4}, less the one over 1..infinity,
// which is e^{iw} times the tail fraction t(w) = 1/(2(s + (1/2)/(1·s' + …))) written out below.
function byFraction(w: number): readonly [number, number] {
  const [tailReal, tailImaginary] = tail(w);
  const whole = Math.sqrt(Math.PI / (8 * w));
  const cosine = Math.cos(w);
  const sine = Math.sin(w);
  return [
    whole - (cosine * tailReal - sine * tailImaginary),
    whole - (cosine * tailImaginary + sine * tailReal),
  ];
}

// With v = u², the tail is (1/2) ∫_1^∞ v^{-1/2} e^{iwv} dv = (1/2) e^{iw} E with E = E_{1/2}(-iw) e^{-iw},
// whose continued fraction is 1/(z + a - 1·a/(z + a + 2 - 2(a + 1)/(z + a + 4 - …))), z = -iw, a = 1/2.
function tail(w: number): readonly [number, number] {
  const a = 0.5;
  let bReal = a;
  const bImaginary = -w;
  let [dReal, dImaginary] = inverse(bReal, bImaginary);
  let [cReal, cImaginary] = [1e300, 0];
  let [hReal, hImaginary] = [dReal, dImaginary];
  for (let k = 1; k < 500; k += 1) {
    const coefficient = -k * (k - 1 + a);
    bReal += 2;
    [dReal, dImaginary] = inverse(coefficient * dReal + bReal, coefficient * dImaginary + bImaginary);
    const [rReal, rImaginary] = inverse(cReal, cImaginary);
    [cReal, cImaginary] = [bReal + coefficient * rReal, bImaginary + coefficient * rImaginary];
    const stepReal = cReal * dReal - cImaginary * dImaginary;
    const stepImaginary = cReal * dImaginary + cImaginary * dReal;
    [hReal, hImaginary] = [
      hReal * stepReal - hImaginary * stepImaginary,
      hReal * stepImaginary + hImaginary * stepReal,
    ];
    if (Math.abs(stepReal - 1) + Math.abs(stepImaginary) < 1e-15) break;
  }
  return [hReal / 2, hImaginary / 2];
}

function inverse(real: number, imaginary: number): readonly [number, number] {
  const size = real * real + imaginary * imaginary;
  return [real / size, -imaginary / size];
}
