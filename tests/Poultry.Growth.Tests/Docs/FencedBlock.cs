namespace Poultry.Growth.Tests.Docs;

/// <summary>A fenced block of a Markdown page.</summary>
/// <param name="File">The page, from the root of the repository.</param>
/// <param name="Line">The line of the opening fence, from 1.</param>
/// <param name="Language">The word after the opening fence; empty where there is none.</param>
/// <param name="Text">What stands between the fences, lines ended by a line feed.</param>
/// <param name="LeadsOn">Whether nothing stands between the block before and this one but blank lines, or one line that ends in a colon.</param>
internal sealed record FencedBlock(string File, int Line, string Language, string Text, bool LeadsOn)
{
    public override string ToString() => $"{File}({Line})";
}
