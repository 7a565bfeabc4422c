using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Poultry.Growth.Calculators.Json;

/// <summary>How documents are written: by generated code, for people to read too.</summary>
[JsonSerializable(typeof(AirDocument))]
[JsonSerializable(typeof(BrooderDocument))]
[JsonSerializable(typeof(CompareDocument))]
[JsonSerializable(typeof(CutsDocument))]
[JsonSerializable(typeof(FitDocument))]
[JsonSerializable(typeof(HistoryDocument))]
[JsonSerializable(typeof(PlanDocument))]
[JsonSerializable(typeof(SeasonDocument))]
[JsonSerializable(typeof(ReconcileDocument))]
[JsonSerializable(typeof(EnergyDocument))]
[JsonSerializable(typeof(FeedDocument))]
[JsonSerializable(typeof(FiguresDocument))]
[JsonSerializable(typeof(HeatDocument))]
[JsonSerializable(typeof(DateDocument))]
[JsonSerializable(typeof(EventsDocument))]
[JsonSerializable(typeof(InspectDocument))]
[JsonSerializable(typeof(LearnDocument))]
[JsonSerializable(typeof(RiskDocument))]
[JsonSerializable(typeof(ProjectDocument))]
[JsonSerializable(typeof(WaterDocument))]
[JsonSerializable(typeof(CratesDocument))]
[JsonSerializable(typeof(PastureDocument))]
[JsonSerializable(typeof(SpaceDocument))]
[JsonSerializable(typeof(StandardsDocument))]
[JsonSerializable(typeof(WeighDocument))]
[JsonSerializable(typeof(WithdrawalDocument))]
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
