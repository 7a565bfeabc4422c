namespace Poultry.Growth.Numerics;

/// <content>The λ for which the step is as long as the radius.</content>
internal ref partial struct TrustRegion
{
    private const int MostDampings = 10;

    private void FindDamping(in Linearisation plane)
    {
        // Newton's correction at λ = 0 is a lower bound; where a column is lost there is none.
        double lower = Correction(plane.Triangle, StepLength - radius);
        lower = double.IsFinite(lower) ? lower : 0;
        double squares = 0;
        for (int j = 0; j < scale.Length; j++)
        {
            double slope = plane.Slopes[j] / scale[j];
            squares += slope * slope;
        }

        double upper = Math.Sqrt(squares) / radius;
        for (int trial = 1; ; trial++)
        {
            // The last damping, or Newton's next, where it lies within the bounds.
            damping = damping > lower && damping < upper ? damping : Math.Max(0.001 * upper, Math.Sqrt(lower * upper));
            Damp(plane);
            UpperTriangle damped = new(dampedColumns, scale.Length, dampedDiagonal);
            damped.Solve(Step);
            StepLength = ScaledLength(Step);
            double excess = StepLength - radius;
            if (Math.Abs(excess) <= 0.1 * radius || trial == MostDampings)
            {
                return;
            }

            (lower, upper) = excess > 0 ? (Math.Max(lower, damping), upper) : (lower, Math.Min(upper, damping));
            damping += Correction(damped, excess);
        }
    }

    /// <summary>Newton's correction of λ for 1 / |D s| = 1 / radius: (|D s| - radius) / radius over the squares of S⁻ᵀ D² s / |D s|.</summary>
    private readonly double Correction(in UpperTriangle triangle, double excess)
    {
        for (int j = 0; j < row.Length; j++)
        {
            row[j] = scale[j] * (scale[j] * Step[j] / StepLength);
        }

        triangle.SolveTransposed(row);
        return excess / radius / Householder.Squares(row);
    }

    /// <summary>Rotates the rows √λ D into R, one after the other, and takes the right-hand side along.</summary>
    private readonly void Damp(in Linearisation plane)
    {
        int n = scale.Length;
        UpperTriangle triangle = plane.Triangle;
        triangle.Diagonal.CopyTo(dampedDiagonal);
        CopyNegated(plane.Projection);
        for (int j = 0; j < n; j++)
        {
            triangle.Above(j).CopyTo(dampedColumns[(j * n)..]);
        }

        double root = Math.Sqrt(damping);
        for (int k = 0; k < n; k++)
        {
            row.Clear();
            row[k] = root * scale[k];
            double right = 0;
            for (int j = k; j < n; j++)
            {
                double length = Math.Sqrt((dampedDiagonal[j] * dampedDiagonal[j]) + (row[j] * row[j]));
                (double cosine, double sine) = length > 0 ? (dampedDiagonal[j] / length, row[j] / length) : (1, 0);
                dampedDiagonal[j] = length;
                for (int i = j + 1; i < n; i++)
                {
                    double above = dampedColumns[(i * n) + j];
                    dampedColumns[(i * n) + j] = (cosine * above) + (sine * row[i]);
                    row[i] = (cosine * row[i]) - (sine * above);
                }

                double side = Step[j];
                Step[j] = (cosine * side) + (sine * right);
                right = (cosine * right) - (sine * side);
            }
        }
    }
}
