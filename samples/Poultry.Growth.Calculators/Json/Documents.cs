using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Poultry.Growth.Calculators.Json;

/// <summary>How documents are written: by generated code, for people to read too.</summary>
[JsonSerializable(typeof(CompareDocument))]
[JsonSerializable(typeof(FitDocument))]
[JsonSerializable(typeof(ProjectDocument))]
[JsonSerializable(typeof(WeighDocument))]
internal sealed partial class Documents : JsonSerializerContext
{
    /// <summary>On a terminal or in a file nothing needs the escapes that a web page does.</summary>
    public static Documents Readable { get; } = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
        Converters = { new KnownDigits() },
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });
}
